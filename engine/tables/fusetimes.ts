import type { SourceKey } from '../sources'
import type { Amps, Seconds } from '../units'

/** At this multiple of its rating a fuse clears no sooner than `least` and no later than `most`. */
export interface TimeGate {
  readonly times: number
  readonly least: Seconds
  /** null: it need not clear. */
  readonly most: Seconds | null
}

/** The limits that a standard sets for a class of fuses: what every maker keeps within, not a curve of one. */
export interface FuseTimes {
  readonly gates: readonly TimeGate[]
  readonly source: SourceKey
  readonly confirmed: boolean
}

const HOUR = 3600

/** By fuse class, as the part kinds name it. Classes without an entry have no published limits here. */
export const FUSE_TIMES: Readonly<Record<string, FuseTimes>> = {
  e: {
    gates: [
      { times: 1, least: 100 * HOUR, most: null },
      { times: 1.35, least: 60, most: 1800 },
      { times: 2, least: 2, most: 60 },
      { times: 3.5, least: 0.2, most: 7 },
    ],
    source: 'din-72581',
    confirmed: true,
  },
  c: blade(),
  f: blade(),
  sf51: {
    gates: [
      { times: 1, least: 4 * HOUR, most: null },
      { times: 1.35, least: 120, most: 1800 },
      { times: 2, least: 1, most: 15 },
      { times: 3.5, least: 0.3, most: 5 },
      { times: 6, least: 0.1, most: 1 },
    ],
    source: 'iso-8820-5',
    confirmed: false,
  },
}

/** Sources differ on the latest clearing at 1.35 times, 600 or 1800 s; the later is taken. */
function blade(): FuseTimes {
  return {
    gates: [
      { times: 1.1, least: 100 * HOUR, most: null },
      { times: 1.35, least: 0.75, most: 1800 },
      { times: 1.6, least: 0.25, most: 50 },
      { times: 2, least: 0.15, most: 5 },
      { times: 3.5, least: 0.08, most: 0.5 },
      { times: 6, least: 0.03, most: 0.1 },
    ],
    source: 'iso-8820-3',
    confirmed: false,
  }
}

/**
 * Latest time in which a fuse of a class clears a current: that of the gate at or below it, as nothing between gates
 * is published. null: it need not clear so small a current. undefined: no limits are known for the class.
 */
export function clearsWithin(fuseClass: string, rating: Amps, current: Amps): Seconds | null | undefined {
  const gates = gatesOf(fuseClass)
  return gates && (gates.findLast((g) => g.times * rating <= current)?.most ?? null)
}

/**
 * Time for which a fuse of a class surely holds a current: the least of the gate at or above it. 0: it is beyond the
 * last gate, and nothing is sure. undefined: no limits are known for the class.
 */
export function holdsFor(fuseClass: string, rating: Amps, current: Amps): Seconds | undefined {
  const gates = gatesOf(fuseClass)
  return gates && (gates.find((g) => g.times * rating >= current)?.least ?? 0)
}

const gatesOf = (fuseClass: string): readonly TimeGate[] | undefined =>
  Object.hasOwn(FUSE_TIMES, fuseClass) ? FUSE_TIMES[fuseClass]!.gates : undefined
