import type { SourceKey } from '../sources'
import type { Amps, Seconds } from '../units'
import { FUSE_TIMES } from './fusetimes'

/** One gate of a band at a current: it clears no sooner than `least` and no later than `most`. */
export interface BandGate {
  readonly amps: Amps
  /** 0: nothing is known of how long it surely holds. */
  readonly least: Seconds
  /** null: it need not clear. */
  readonly most: Seconds | null
}

/** Time-current band of one fuse: between its gates nothing is known but what the next gate implies. */
export interface FuseBand {
  readonly gates: readonly BandGate[]
  readonly source: SourceKey
  readonly confirmed: boolean
}

/** Points of a curve as its maker states them, at a multiple of the rating. null: not stated. */
export interface OwnPoints {
  /** It surely bears this for so long. */
  readonly holds: OwnPoint | null
  /** It surely clears this within so long. */
  readonly clears: OwnPoint | null
}

export interface OwnPoint {
  readonly times: number
  readonly seconds: Seconds
}

/**
 * The band of a fuse: the published limits of its class, and the maker's own points where they are typed. A point
 * stands over the published gates: for smaller currents it holds at least as long, for greater ones it clears at
 * least as fast. null: there are neither limits nor points.
 */
export function fuseBand(fuseClass: string, ratingA: Amps, { holds, clears }: OwnPoints): FuseBand | null {
  const published = Object.hasOwn(FUSE_TIMES, fuseClass) ? FUSE_TIMES[fuseClass]! : null
  if (!published && !holds && !clears) return null
  const band: FuseBand = {
    gates: (published?.gates ?? []).map((g) => ({ ...g, amps: g.times * ratingA })),
    source: holds || clears ? 'rating' : published!.source,
    confirmed: published?.confirmed ?? true,
  }
  const points = [holds, clears].flatMap((point) => (point ? [point.times * ratingA] : []))
  const at = [...new Set([...band.gates.map((g) => g.amps), ...points])].sort((a, b) => a - b)
  const gates = at.map((amps): BandGate => {
    const least = holdsAtLeast(band, amps)
    const most = clearsBy(band, amps)
    return {
      amps,
      least: holds && amps <= holds.times * ratingA ? Math.max(least, holds.seconds) : least,
      most:
        clears && amps >= clears.times * ratingA
          ? Math.min(most ?? Number.POSITIVE_INFINITY, clears.seconds)
          : most,
    }
  })
  return { ...band, gates }
}

/**
 * Latest time in which the fuse clears a current: that of the gate at or below it. Beyond the last gate I²t stays as it
 * is there: an element that melts before it gives off heat takes the same I²t at every greater current, and the
 * slow edge of a band has fallen to it or is still above it. Common practice, no source; within the breaking
 * capacity only. null: it need not clear so small a current.
 */
export function clearsBy(band: FuseBand, amps: Amps): Seconds | null {
  const last = band.gates[band.gates.length - 1]
  if (last && amps > last.amps) return last.most === null ? null : last.most * (last.amps / amps) ** 2
  return band.gates.findLast((g) => g.amps <= amps)?.most ?? null
}

/** Time for which it surely holds a current: the least of the gate at or above it; 0 beyond the last gate. */
export const holdsAtLeast = (band: FuseBand, amps: Amps): Seconds =>
  band.gates.find((g) => g.amps >= amps)?.least ?? 0
