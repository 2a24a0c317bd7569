import { components } from '../math/components'
import { graphOf } from '../math/graph'
import { isBattery } from './galvanic'
import type { Prepared } from './prepare'

/**
 * The next protective devices between a device and the batteries, by branch; none where batteries stand on both of its
 * sides, or no battery does. What hangs together without a device in between is one zone; each question is a search
 * over the zones of one net.
 */
export function upstreamOf(p: Prepared): (branch: number) => number[] {
  const plain: number[] = []
  const fuses: number[] = []
  for (let e = 0; e < p.graph.edgeCount; e++) (p.isFuse[e] === 1 ? fuses : plain).push(e)
  const tail = Int32Array.from(plain, (e) => p.graph.tail[e]!)
  const head = Int32Array.from(plain, (e) => p.graph.head[e]!)
  const { of, count } = components(graphOf(p.graph.vertexCount, tail, head))
  const zonesOf = (e: number): readonly [number, number] => [of[p.graph.tail[e]!]!, of[p.graph.head[e]!]!]
  const hasBattery = new Uint8Array(count)
  p.form.devices.forEach((_, d) => {
    if (!isBattery(p, d)) return
    hasBattery[of[p.positive[d]!]!] = 1
    hasBattery[of[p.negative[d]!]!] = 1
  })
  const at: number[][] = Array.from({ length: count }, () => [])
  for (const e of fuses) for (const zone of new Set(zonesOf(e))) at[zone]!.push(e)
  const beyond = (zone: number, e: number): number => {
    const [a, b] = zonesOf(e)
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
  return (e) => {
    const [a, b] = zonesOf(e)
    const sides = a === b ? [] : [a, b].filter((zone) => fed(zone, new Set([e])))
    const [zone] = sides
    if (zone === undefined || sides.length !== 1) return []
    const next = new Set(at[zone]!)
    return at[zone]!.filter((up) => up !== e && beyond(zone, up) !== zone && fed(beyond(zone, up), next))
  }
}
