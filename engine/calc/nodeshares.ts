import type { Blocks } from '../math/blocks'
import { divisionOf, sharesIn } from '../math/division'
import type { Prepared } from './prepare'
import { deviceCoefficients } from './transfer'

/**
 * Current in a branch, from → to, for 1 A put in at each node of its net, up to a constant: a bridge tells the part
 * that hangs on it from the rest; a branch of a meshed block takes its share of what comes in at each joint,
 * and what hangs on a joint counts as the joint. Meaningless on nodes of other nets. O(nodes), and in a block a
 * factorisation and two solves. All 0 for a self-loop.
 */
export function nodeShares(p: Prepared, b: Blocks, branch: number): Float64Array {
  const share = new Float64Array(p.graph.vertexCount)
  const block = b.of[branch]!
  let own: (v: number) => number | undefined = () => undefined
  if (block >= 0) {
    const edges = b.edge.subarray(b.start[block]!, b.start[block + 1]!)
    const division = divisionOf(edges, p.graph.tail, p.graph.head, p.resistance)
    const shares = sharesIn(division, edges.indexOf(branch))
    const first = b.order[Math.min(...Array.from(division.vertices, (v) => b.rank[v]!))]!
    const base = shares[division.place.get(first)!]!
    own = (v) => (b.above[v] === block ? shares[division.place.get(v)!]! - base : undefined)
  } else {
    const tail = p.graph.tail[branch]!
    own = (v) => (b.bridge[v] === branch ? (v === tail ? 1 : -1) : undefined)
  }
  for (const v of b.order) share[v] = own(v) ?? (b.top[v] === -1 ? 0 : share[b.top[v]!]!)
  return share
}

/** The same for 1 A that each device delivers, by device: in at its positive, out at its negative terminal. */
export function deviceShares(p: Prepared, b: Blocks, branch: number): Float64Array {
  return deviceCoefficients(p, p.net[p.graph.tail[branch]!]!, nodeShares(p, b, branch))
}
