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

/** One point of a curve as its maker states it: so many times the rating is cleared within so long. */
export interface OwnPoint {
  readonly times: number | null
  readonly seconds: Seconds | null
}

/**
 * The band of a fuse: the published limits of its class, and the maker's own point where one is typed. null: neither
 * is there. A maker's point stands in place of published gates from its current on.
 */
export function fuseBand(fuseClass: string, ratingA: Amps, own: OwnPoint): FuseBand | null {
  const published = Object.hasOwn(FUSE_TIMES, fuseClass) ? FUSE_TIMES[fuseClass]! : null
  const point =
    own.times !== null && own.seconds !== null && own.seconds > 0
      ? { amps: own.times * ratingA, seconds: own.seconds }
      : null
  if (!published && !point) return null
  const gates = (published?.gates ?? []).map(
    (g): BandGate => ({ amps: g.times * ratingA, least: g.least, most: g.most }),
  )
  if (!point) return { gates, source: published!.source, confirmed: published!.confirmed }
  return {
    gates: [...gates.filter((g) => g.amps < point.amps), { amps: point.amps, least: 0, most: point.seconds }],
    source: 'rating',
    confirmed: published?.confirmed ?? true,
  }
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
