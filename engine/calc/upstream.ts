import { blocksOf } from '../math/blocks'
import { graphOf } from '../math/graph'
import type { Prepared } from './prepare'
import { type Zones, zonesOf } from './zones'

/**
 * The next protective devices between a device and the batteries, by branch; none where batteries stand on both of its
 * sides, or no battery does. What feeds a zone is a search over the zones round it, made once for each.
 */
export function upstreamOf(p: Prepared): (branch: number) => number[] {
  const zones = zonesOf(p, (e) => p.isFuse[e] === 1)
  const { hasBattery, at, ends } = zones
  const fedBesides = batteriesBesides(zones)
  const beyond = (zone: number, e: number): number => {
    const [a, b] = ends(e)
    return a === zone ? b : a
  }
  /** Does a battery reach a zone without passing some devices? */
  const fed = (zone: number, without: ReadonlySet<number>): boolean => {
    const seen = new Set([zone])
    for (const z of seen) {
      if (hasBattery[z] === 1) return true
      for (const e of at[z]!) if (!without.has(e)) seen.add(beyond(z, e))
    }
    return false
  }
  /** Devices at a zone behind which a battery stands, each counted without the others of the zone. */
  const known = new Map<number, readonly number[]>()
  const feeding = (zone: number): readonly number[] => {
    const before = known.get(zone)
    if (before) return before
    const all = new Set(at[zone]!)
    const found = at[zone]!.filter((e) => beyond(zone, e) !== zone && fed(beyond(zone, e), all))
    known.set(zone, found)
    return found
  }
  return (e) => {
    const [a, b] = ends(e)
    const sides = a === b ? [] : [a, b].filter((zone) => fedBesides(zone, e))
    const [zone] = sides
    return zone === undefined || sides.length !== 1 ? [] : feeding(zone).filter((up) => up !== e)
  }
}

/** Does a battery reach a zone otherwise than through a device at it? Prepared in O(zones + devices), O(1) each. */
function batteriesBesides({ count, hasBattery, at, ends }: Zones): (zone: number, device: number) => boolean {
  const devices = [...new Set(at.flat())]
  const index = new Map(devices.map((e, i) => [e, i]))
  const tail = Int32Array.from(devices, (e) => ends(e)[0])
  const head = Int32Array.from(devices, (e) => ends(e)[1])
  const { order, top, bridge } = blocksOf(graphOf(count, tail, head))
  const below = Int32Array.from(hasBattery)
  for (let i = count - 1; i >= 0; i--) {
    const zone = order[i]!
    if (top[zone] !== -1) below[top[zone]!]! += below[zone]!
  }
  const root = new Int32Array(count)
  for (const zone of order) root[zone] = top[zone] === -1 ? zone : root[top[zone]!]!
  return (zone, device) => {
    const i = index.get(device)!
    const lower = [tail[i]!, head[i]!].find((end) => bridge[end] === i)
    const all = below[root[zone]!]!
    if (lower === undefined) return all > 0
    return (zone === lower ? below[lower]! : all - below[lower]!) > 0
  }
}
