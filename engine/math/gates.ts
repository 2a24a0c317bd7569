import { type BlockFlow, blockFlow, type Capacities } from './blockflow'
import { type BlockTree, blockTree } from './blocktree'

/** A network with something to supply, A per vertex; Infinity is 'unlimited'. */
export interface Supplied extends Capacities {
  readonly supply: Float64Array
}

/** What flows where the blocks of a network meet. */
export interface Gates {
  readonly tree: BlockTree
  /** Per joint: the most that can come out of the block into the vertex. */
  readonly gate: Float64Array
  /** Per joint: the most that can come to the vertex from elsewhere, its own supply included. */
  readonly inflow: Float64Array
  /** Flow inside block b, which has more than one edge. */
  block(b: number): BlockFlow
  /** Inflow at the places of block b; a copy. */
  inflows(b: number): Float64Array
  /** The joint of block b at vertex v. */
  jointOf(b: number, v: number): number
  /** For a block of one edge: its capacity towards the joint, and the joint at its other end. */
  single(b: number, joint: number): number
  otherJoint(b: number, joint: number): number
}

/**
 * At a joint of two blocks what can come from beyond is one number, so two sweeps over the tree of blocks settle
 * all that is tree-like in closed form; inside a block with several edges one flow is solved per cluster.
 * O(n + m) plus those flows. Loops only.
 */
export function gatesOf(net: Supplied): Gates {
  const { graph, forward, backward, supply } = net
  const tree = blockTree(graph)
  const { jointStart, jointVertex, vertexStart, atVertex, order, top } = tree
  /** Per joint: what comes out of the block into the vertex, and what comes to the vertex from elsewhere. */
  const gate = new Float64Array(jointVertex.length)
  const inflow = new Float64Array(jointVertex.length)
  const inner: (BlockFlow | undefined)[] = new Array(order.length)
  const outside: (Float64Array | undefined)[] = new Array(order.length)

  for (let i = order.length - 1; i >= 0; i--) {
    const b = order[i]!
    for (let j = jointStart[b]!; j < jointStart[b + 1]!; j++) if (j !== top[b]) inflow[j] = fromBelow(j)
    gate[top[b]!] = through(b, top[b]!)
  }
  for (let i = 0, settled = -1; i < order.length; i++) {
    const b = order[i]!
    const v = jointVertex[top[b]!]!
    if (v !== settled) settle(v)
    settled = v
    throughAll(b)
  }

  return { tree, gate, inflow, block, inflows, jointOf, single, otherJoint }

  /** Supply of the joint's vertex and all that hangs from it. */
  function fromBelow(joint: number): number {
    const v = jointVertex[joint]!
    let sum = supply[v]!
    for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++)
      if (atVertex[i] !== joint) sum += gate[atVertex[i]!]!
    return sum
  }

  /** Inflow of every joint at v: all gates but its own, summed from both sides and never subtracted. */
  function settle(v: number): void {
    let before = supply[v]!
    for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++) {
      inflow[atVertex[i]!] = before
      before += gate[atVertex[i]!]!
    }
    let after = 0
    for (let i = vertexStart[v + 1]! - 1; i >= vertexStart[v]!; i--) {
      inflow[atVertex[i]!]! += after
      after += gate[atVertex[i]!]!
    }
  }

  /** What comes out of block b into one of its joints, by what comes to its other joints. */
  function through(b: number, joint: number): number {
    if (tree.edges[b]!.length === 1) return Math.min(inflow[otherJoint(b, joint)]!, single(b, joint))
    const { cluster } = block(b)
    const c = cluster[joint - jointStart[b]!]!
    let sum = intoCluster(b, c)
    for (let j = jointStart[b]!; j < jointStart[b + 1]!; j++)
      if (j !== joint && cluster[j - jointStart[b]!] === c) sum += inflow[j]!
    return sum
  }

  /** `through` for all joints but the top, in one pass. */
  function throughAll(b: number): void {
    const from = jointStart[b]!
    const to = jointStart[b + 1]!
    if (tree.edges[b]!.length === 1) {
      const j = otherJoint(b, top[b]!)
      gate[j] = through(b, j)
      return
    }
    const { cluster } = block(b)
    const before = new Float64Array(to - from)
    const after = new Float64Array(to - from)
    const keep = gate[top[b]!]!
    for (let j = from; j < to; j++) {
      const c = cluster[j - from]!
      gate[j] = before[c]!
      before[c]! += inflow[j]!
    }
    for (let j = to - 1; j >= from; j--) {
      const c = cluster[j - from]!
      gate[j]! += after[c]! + intoCluster(b, c)
      after[c]! += inflow[j]!
    }
    gate[top[b]!] = keep
  }

  /** Capacity of a block of one edge towards the joint. */
  function single(b: number, joint: number): number {
    const e = tree.edges[b]![0]!
    return graph.head[e] === jointVertex[joint] ? forward[e]! : backward[e]!
  }

  function otherJoint(b: number, joint: number): number {
    return jointStart[b]! + jointStart[b + 1]! - 1 - joint
  }

  function block(b: number): BlockFlow {
    inner[b] ??= blockFlow(
      net,
      tree.edges[b]!,
      Array.from(jointVertex.subarray(jointStart[b]!, jointStart[b + 1]!)),
    )
    return inner[b]!
  }

  function inflows(b: number): Float64Array {
    return inflow.slice(jointStart[b]!, jointStart[b + 1]!)
  }

  /** Flow into a cluster from the rest of its block; solved once. */
  function intoCluster(b: number, c: number): number {
    const { cluster, into: solve } = block(b)
    outside[b] ??= new Float64Array(cluster.length).fill(Number.NaN)
    const known = outside[b]!
    if (Number.isNaN(known[c]!)) {
      const other = inflows(b)
      for (let k = 0; k < cluster.length; k++) if (cluster[k] === c) other[k] = 0
      known[c] = solve(cluster.indexOf(c), other)
    }
    return known[c]!
  }

  function jointOf(b: number, v: number): number {
    let j = jointStart[b]!
    while (jointVertex[j] !== v) j++
    return j
  }
}
