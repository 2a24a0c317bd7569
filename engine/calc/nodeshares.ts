import type { Blocks } from '../math/blocks'
import { sharesIn } from '../math/division'
import type { Prepared } from './prepare'
import { deviceCoefficients } from './transfer'

/**
 * Current in a branch, from → to, for 1 A put in at each node of its net, up to a constant: a bridge tells the part
 * that hangs on it from the rest; a branch of a meshed block takes its share of what comes in at each joint,
 * and what hangs on a joint counts as the joint. Meaningless on nodes of other nets. O(nodes), and in a block a
 * factorisation and a solve. All 0 for a self-loop.
 */
export function nodeShares(p: Prepared, b: Blocks, branch: number): Float64Array {
  const { graph } = p
  const share = new Float64Array(graph.vertexCount)
  const block = b.of[branch]!
  if (block >= 0) {
    const edges = b.edge.subarray(b.start[block]!, b.start[block + 1]!)
    const joints = sharesIn(edges, graph.tail, graph.head, p.resistance, branch)
    joints.vertices.forEach((v, i) => {
      share[v] = joints.share[i]!
    })
    const top = joints.vertices.find((v) => b.above[v] !== block)!
    const base = share[top]!
    for (const v of b.order)
      if (b.above[v] !== block && v !== top) share[v] = b.top[v] === -1 ? base : share[b.top[v]!]!
    return share
  }
  for (const v of b.order)
    if (b.top[v] !== -1)
      share[v] = b.bridge[v] === branch ? (v === graph.tail[branch] ? 1 : -1) : share[b.top[v]!]!
  return share
}

/** The same for 1 A that each device delivers, by device: in at its positive, out at its negative terminal. */
export function deviceShares(p: Prepared, b: Blocks, branch: number): Float64Array {
  return deviceCoefficients(p, p.net[p.graph.tail[branch]!]!, nodeShares(p, b, branch))
}
