import { balance, type Extreme } from '../math/balance'
import type { Amps } from '../units'
import type { MeterAnswer } from './meters'
import type { Prepared } from './prepare'
import type { Share } from './share'

/** How far a shunt's reading can be from the truth, one way. */
export interface ReadingError {
  /** A ≥ 0; Infinity where nothing limits it. */
  readonly amps: Amps
  /** Device currents that bring it about, by device. */
  readonly witness: Float64Array
  /** Devices whose share is not what it should be, by how much each puts the reading out then, most first. */
  readonly causes: readonly { readonly device: number; readonly amps: Amps }[]
}

/** `over`: it reads more draw than is true; `under`: less. */
export interface ReadingErrors {
  readonly over: ReadingError
  readonly under: ReadingError
}

/** Prepares the device currents that can be: every mix within bounds, one balance a net. */
export function deviceCurrents(
  p: Prepared,
  min: Float64Array = p.min,
  max: Float64Array = p.max,
): (objective: Float64Array, rounding?: number) => Extreme {
  return balance(
    p.netCount,
    p.negative.map((v) => p.net[v]!),
    p.positive.map((v) => p.net[v]!),
    min,
    max,
  )
}

/** Shares are of the order of 1; below this they are rounding. */
const ROUNDING = 1e-10

/** Largest over- and under-reading over every mix of device currents. O(devices) where nets form no ring. */
export function readingErrors(
  currents: (objective: Float64Array, rounding?: number) => Extreme,
  m: MeterAnswer,
): ReadingErrors {
  const error = m.reading.map((k, d) => k - m.truth[d]!)
  const side = (sign: 1 | -1): ReadingError => {
    const { value, x } = currents(
      error.map((c) => sign * c),
      ROUNDING,
    )
    const amps = value > 1e-9 ? value : 0
    const causes = m.shares
      .map((s) => ({ device: s.device, amps: sign * -x[s.device]! * outBy(s) }))
      .filter((c) => Math.abs(c.amps) > 1e-9 && amps > 0)
      .sort((a, b) => b.amps - a.amps)
    return { amps, witness: amps > 0 ? x : x.map(() => 0), causes }
  }
  return { over: side(1), under: side(-1) }
}

/** Share less what it should be; where it is a range, the end further off. */
function outBy(s: Share): number {
  if (!s.range) return 0
  const expected = s.expected ?? 0
  const low = s.range.from - expected
  const high = s.range.to - expected
  return Math.abs(high) >= Math.abs(low) ? high : low
}
