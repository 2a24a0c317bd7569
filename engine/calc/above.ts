import type { Prepared } from './prepare'

/**
 * Nets in the order their sources stack them: a source lifts from the net of its negative to the net of its
 * positive terminal. Sources are the devices that can feed a fault.
 */
export interface SourceOrder {
  /** Nets lifted to from each net, and the device that does it. */
  readonly lifts: readonly (readonly { to: number; device: number }[])[]
  /** 1 where a source ends in the net. */
  readonly touched: Uint8Array
  /**
   * 1 where a circle of sources can be reached from the net upwards: no net is then the lower one, and nothing can
   * be said. A circle elsewhere does no harm: its nets count as supply, which is the most that can come from them.
   */
  readonly circling: Uint8Array
}

/** O(nets + devices). */
export function sourceOrder(p: Prepared): SourceOrder {
  const lifts: { to: number; device: number }[][] = Array.from({ length: p.netCount }, () => [])
  const from: number[][] = Array.from({ length: p.netCount }, () => [])
  const touched = new Uint8Array(p.netCount)
  const above = new Int32Array(p.netCount)
  for (let d = 0; d < p.positive.length; d++) {
    if (!(p.fault[d]! > 0)) continue
    const low = p.net[p.negative[d]!]!
    const high = p.net[p.positive[d]!]!
    lifts[low]!.push({ to: high, device: d })
    from[high]!.push(low)
    above[low]!++
    touched[low] = 1
    touched[high] = 1
  }
  const circling = new Uint8Array(p.netCount).fill(1)
  const settled: number[] = []
  for (let net = 0; net < p.netCount; net++) if (above[net] === 0) settled.push(net)
  for (let net = settled.pop(); net !== undefined; net = settled.pop()) {
    circling[net] = 0
    for (const low of from[net]!) if (--above[low]! === 0) settled.push(low)
  }
  return { lifts, touched, circling }
}

/** Devices of one circle of sources that is reached from a circling net. */
export function circleFrom(order: SourceOrder, net: number): number[] {
  const stepAt = new Map<number, number>()
  const devices: number[] = []
  let at = net
  while (!stepAt.has(at)) {
    stepAt.set(at, devices.length)
    const lift = order.lifts[at]!.find((l) => order.circling[l.to] === 1)!
    devices.push(lift.device)
    at = lift.to
  }
  return devices.slice(stepAt.get(at)!)
}

/** The net itself and every net above it. O(what is above). */
export function netAndAbove(order: SourceOrder, net: number): Set<number> {
  const found = new Set([net])
  for (const low of found) for (const { to } of order.lifts[low]!) found.add(to)
  return found
}
