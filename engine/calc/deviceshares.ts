import type { Blocks } from '../math/blocks'
import { sharesIn } from '../math/division'
import type { Prepared } from './prepare'

export interface DeviceShares {
  of(branch: number): Float64Array
  /** The same, only the devices that count, in their order. */
  few(branch: number): Map<number, number>
  /** The same number for branches whose currents are the same figure, and −n − 1 for its opposite; NaN: not known. */
  alike(branch: number): number
}

/**
 * Prepares, for any branch, its current from → to for 1 A that each device delivers (in at its positive, out at its
 * negative terminal), by device; means something only in sums that balance in every net. A bridge tells the part that
 * hangs on it from the rest; a branch of a meshed block takes its share of what comes in at each joint, and what hangs
 * on a joint counts as the joint. All 0 for a self-loop.
 * Cost of one branch: O(devices); in a block O(nodes of the net) more, a factorisation of the block and a solve.
 */
export function deviceShares(p: Prepared, b: Blocks): DeviceShares {
  const { graph, positive, negative } = p
  const end = ends(b)
  const share = new Float64Array(graph.vertexCount)
  const terminals = terminalsByRank(p, b)

  const hangingFrom = (branch: number): number =>
    b.bridge[graph.tail[branch]!] === branch ? graph.tail[branch]! : graph.head[branch]!

  const ofBridge = (branch: number): Float64Array => {
    const hanging = hangingFrom(branch)
    const first = b.rank[hanging]!
    const last = end[hanging]!
    const sign = hanging === graph.tail[branch] ? 1 : -1
    const under = (v: number): number => (b.rank[v]! >= first && b.rank[v]! < last ? sign : 0)
    const found = new Float64Array(positive.length)
    for (let d = 0; d < found.length; d++) found[d] = under(positive[d]!) - under(negative[d]!)
    return found
  }

  const ofMeshed = (branch: number, block: number): Float64Array => {
    const edges = b.edge.subarray(b.start[block]!, b.start[block + 1]!)
    const joints = sharesIn(edges, graph.tail, graph.head, p.resistance, branch)
    let top = -1
    joints.vertices.forEach((v, i) => {
      share[v] = joints.share[i]!
      if (b.above[v] !== block) top = v
    })
    let root = top
    while (b.top[root] !== -1) root = b.top[root]!
    for (let k = b.rank[root]!; k < end[root]!; k++) {
      const v = b.order[k]!
      if (b.above[v] !== block && v !== top) share[v] = v === root ? share[top]! : share[b.top[v]!]!
    }
    const net = p.net[root]!
    const at = (v: number): number => (p.net[v] === net ? share[v]! : 0)
    const found = new Float64Array(positive.length)
    for (let d = 0; d < found.length; d++) found[d] = at(positive[d]!) - at(negative[d]!)
    return found
  }

  /** Devices with one terminal under the bridge; those with both cancel. */
  const fewOfBridge = (branch: number): Map<number, number> => {
    const hanging = hangingFrom(branch)
    const sign = hanging === graph.tail[branch] ? 1 : -1
    const found = new Map<number, number>()
    for (let i = terminals.before[b.rank[hanging]!]!; i < terminals.before[end[hanging]!]!; i++) {
      const d = terminals.device[i]!
      const own = positive[d] === negative[d] ? 0 : positive[d] === terminals.vertex[i] ? sign : -sign
      const before = found.get(d)
      if (before !== undefined) found.delete(d)
      else if (own !== 0) found.set(d, own)
    }
    return ascending(found)
  }

  const isLoop = (branch: number): boolean => graph.tail[branch] === graph.head[branch]
  return {
    of(branch) {
      if (isLoop(branch)) return new Float64Array(positive.length)
      const block = b.of[branch]!
      return block >= 0 ? ofMeshed(branch, block) : ofBridge(branch)
    },
    few(branch) {
      if (isLoop(branch)) return new Map()
      const block = b.of[branch]!
      return block >= 0 ? counting(ofMeshed(branch, block)) : fewOfBridge(branch)
    },
    alike(branch) {
      if (isLoop(branch) || b.of[branch]! >= 0) return Number.NaN
      const hanging = hangingFrom(branch)
      const from = terminals.before[b.rank[hanging]!]!
      const to = terminals.before[end[hanging]!]!
      const outward = hanging === graph.tail[branch]
      if (to - from !== 1) {
        const span = positive.length + from * (2 * positive.length + 1) + to
        return outward ? span : -span - 1
      }
      const device = terminals.device[from]!
      const delivers = outward === (p.positive[device] === terminals.vertex[from])
      return delivers ? device : -device - 1
    },
  }
}

const ascending = (shares: Map<number, number>): Map<number, number> =>
  shares.size < 2 ? shares : new Map([...shares].sort(([a], [b]) => a - b))

function counting(shares: Float64Array): Map<number, number> {
  const found = new Map<number, number>()
  for (let d = 0; d < shares.length; d++) if (shares[d] !== 0) found.set(d, shares[d]!)
  return found
}

/** Terminals of devices in the order of their nodes, and how many stand before each place in that order. */
function terminalsByRank(
  { positive, negative, graph }: Prepared,
  { rank }: Blocks,
): { before: Int32Array; device: Int32Array; vertex: Int32Array } {
  const before = new Int32Array(graph.vertexCount + 1)
  for (const ends of [positive, negative]) for (const v of ends) before[rank[v]! + 1]!++
  for (let k = 0; k < graph.vertexCount; k++) before[k + 1]! += before[k]!
  const next = before.slice()
  const device = new Int32Array(2 * positive.length)
  const vertex = new Int32Array(2 * positive.length)
  for (const ends of [positive, negative])
    ends.forEach((v, d) => {
      const i = next[rank[v]!]!++
      device[i] = d
      vertex[i] = v
    })
  return { before, device, vertex }
}

/** Place in the order after the last vertex at or below each vertex; below a bridge or a root they stand together. */
function ends(b: Blocks): Int32Array {
  const end = b.rank.map((k) => k + 1)
  for (let k = b.order.length - 1; k >= 0; k--) {
    const v = b.order[k]!
    const top = b.top[v]!
    if (top !== -1 && end[top]! < end[v]!) end[top] = end[v]!
  }
  return end
}
