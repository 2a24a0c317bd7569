import type { Volts } from '../units'
import type { Prepared } from './prepare'

/** Something that holds its two nets apart by up to so many volts. */
export interface Step {
  readonly device: number
  readonly volts: Volts
}

/**
 * Highest voltage that a device in each net may have to interrupt: the greatest sum of steps on a way up from the net
 * and on a way down from it, no net twice. Batteries in parallel count once, a string its sum.
 */
export function highestVolts(p: Prepared, steps: readonly Step[]): (net: number) => Volts {
  const up = new Map<number, { to: number; volts: Volts }[]>()
  const down = new Map<number, { to: number; volts: Volts }[]>()
  for (const { device, volts } of steps) {
    const low = p.net[p.negative[device]!]!
    const high = p.net[p.positive[device]!]!
    if (low === high) continue
    up.set(low, [...(up.get(low) ?? []), { to: high, volts }])
    down.set(high, [...(down.get(high) ?? []), { to: low, volts }])
  }
  const most = (ways: typeof up, known: Map<number, Volts>, net: number): Volts => {
    const before = known.get(net)
    if (before !== undefined) return before
    known.set(net, 0)
    const volts = Math.max(0, ...(ways.get(net) ?? []).map((w) => w.volts + most(ways, known, w.to)))
    known.set(net, volts)
    return volts
  }
  const above = new Map<number, Volts>()
  const below = new Map<number, Volts>()
  return (net) => most(up, above, net) + most(down, below, net)
}
