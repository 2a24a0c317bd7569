import type { Volts } from '../../units'
import type { Prepared } from '../prepare'
import type { Feeds } from './feeds'
import type { Plan } from './plan'
import type { Uses } from './uses'

/** A charger that holds the voltage of its absorption or float, by device. */
export interface Holding {
  readonly device: number
  readonly heldV: Volts
}

/**
 * Voltage at which each battery stands that lies between the terminals of a holding charger, in parallel or in series;
 * of several chargers the highest. A bank in series shares it by its rest voltages. O(chargers × batteries).
 */
export function standingBatteries(
  plan: Plan,
  p: Prepared,
  feeds: Feeds,
  uses: Uses,
  holding: readonly Holding[],
): Map<number, Volts> {
  const standing = new Map<number, Volts>()
  const batteries = plan.devices.flatMap(({ is }, d) => (is === 'battery' ? [d] : []))
  const high = (d: number): number => p.net[p.positive[d]!]!
  const low = (d: number): number => p.net[p.negative[d]!]!
  for (const { device, heldV } of holding) {
    const above = reach(low(device), batteries, low, high)
    const below = reach(high(device), batteries, high, low)
    const times = heldV / feeds.restV(device)!
    for (const d of batteries) {
      if (!above.has(low(d)) || !below.has(high(d))) continue
      const volts = times * uses.emf[d]!
      if (volts > Math.max(uses.emf[d]!, standing.get(d) ?? 0)) standing.set(d, volts)
    }
  }
  return standing
}

/** Nets that can be reached from one over batteries, each passed one way. */
function reach(
  from: number,
  batteries: readonly number[],
  enter: (d: number) => number,
  leave: (d: number) => number,
): Set<number> {
  const nets = new Set([from])
  for (const net of nets) for (const d of batteries) if (enter(d) === net) nets.add(leave(d))
  return nets
}
