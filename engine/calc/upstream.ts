import type { Prepared } from './prepare'
import { zonesOf } from './zones'

/**
 * The next protective devices between a device and the batteries, by branch; none where batteries stand on both of its
 * sides, or no battery does. Each question is a search over the zones between devices; what feeds a zone is found once.
 */
export function upstreamOf(p: Prepared): (branch: number) => number[] {
  const { hasBattery, at, ends } = zonesOf(p, (e) => p.isFuse[e] === 1)
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
    const sides = a === b ? [] : [a, b].filter((zone) => fed(zone, new Set([e])))
    const [zone] = sides
    return zone === undefined || sides.length !== 1 ? [] : feeding(zone).filter((up) => up !== e)
  }
}
