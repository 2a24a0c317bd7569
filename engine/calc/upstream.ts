import { behindOf } from './behind'
import type { Prepared } from './prepare'

/**
 * The next protective devices between a device and the batteries, by branch; none where batteries stand on both of its
 * sides, or no battery does. O(size of the net) for each device asked.
 */
export function upstreamOf(p: Prepared): (branch: number) => number[] {
  const behind = behindOf(p)
  const isFuse = (e: number): boolean => p.isFuse[e] === 1
  const never = (): boolean => false
  return (e) => {
    const ends = [p.graph.tail[e]!, p.graph.head[e]!]
    const fed = ends.filter((v) => behind.from([v], e, never).battery)
    if (fed.length !== 1) return []
    const next = behind.from(fed, e, isFuse)
    const past = (b: number): boolean => {
      const beyond = [p.graph.tail[b]!, p.graph.head[b]!].filter((v) => !next.reached.has(v))
      return beyond.some((v) => behind.from([v], b, (x) => x === e || next.barriers.includes(x)).battery)
    }
    return next.barriers.filter(past)
  }
}
