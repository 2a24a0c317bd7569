import { type BlockFlow, blockFlow, type Capacities, type CutEdge } from './blockflow'
import { blockTree } from './blocktree'

/** A network with something to supply, A per vertex; Infinity is 'unlimited'. */
export interface Supplied extends Capacities {
  readonly supply: Float64Array
}

/** What can come into the ends of an edge from the rest of the network, the edge taken out. Unlimited edges only. */
export interface EndFlows {
  /** Greatest flow into the tail or head of the edge; Infinity when unlimited. */
  into(edge: number, end: 'tail' | 'head'): number
  /** The minimum cut nearest the end: edges that limit, and vertices whose whole supply is drawn. */
  cut(edge: number, end: 'tail' | 'head'): { edges: CutEdge[]; vertices: number[] }
}

/**
 * Flow from all supplies to every edge end, without solving a flow for each. At a joint of two blocks what comes
 * from beyond is one number, so two sweeps over the tree of blocks settle all that is tree-like in closed form;
 * inside a block with several edges one flow is solved per cluster, and two per unlimited edge that parts one.
 * O(n + m) plus those flows. Loops only.
 */
export function endFlows(net: Supplied): EndFlows {
  const { graph, forward, backward, supply } = net
  if (!supply.some((x) => x > 0)) return { into: () => 0, cut: () => ({ edges: [], vertices: [] }) }
  const tree = blockTree(graph)
  const { jointStart, jointVertex, jointBlock, vertexStart, atVertex, order, top } = tree
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

  return { into, cut }

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

  function onlyEdge(b: number, joint: number): CutEdge {
    const edge = tree.edges[b]![0]!
    return { edge, towards: graph.head[edge] === jointVertex[joint] ? 'head' : 'tail' }
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

  function into(edge: number, end: 'tail' | 'head'): number {
    const v = graph[end][edge]!
    const b = tree.of[edge]!
    if (b === -1) return everything(v)
    const joint = jointOf(b, v)
    if (tree.edges[b]!.length === 1) return inflow[joint]!
    const place = joint - jointStart[b]!
    if (block(b).splits(edge)) return block(b).into(place, inflows(b), edge)
    return inflow[joint]! + gate[joint]!
  }

  function everything(v: number): number {
    let sum = supply[v]!
    for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++) sum += gate[atVertex[i]!]!
    return sum
  }

  function jointOf(b: number, v: number): number {
    let j = jointStart[b]!
    while (jointVertex[j] !== v) j++
    return j
  }

  function cut(edge: number, end: 'tail' | 'head'): { edges: CutEdge[]; vertices: number[] } {
    const edges: CutEdge[] = []
    const vertices: number[] = []
    /** Joints still to be looked behind: all that comes to their vertex other than through their block. */
    const pending: number[] = []
    const v = graph[end][edge]!
    const home = tree.of[edge]!
    if (home === -1) lookAround(v, -1)
    else if (tree.edges[home]!.length === 1) pending.push(jointOf(home, v))
    else {
      const place = jointOf(home, v) - jointStart[home]!
      collect(home, block(home).cut(place, inflows(home), edge))
    }
    for (let j = pending.pop(); j !== undefined; j = pending.pop()) lookAround(jointVertex[j]!, j)
    return { edges, vertices }

    function lookAround(vertex: number, except: number): void {
      if (supply[vertex]! > 0) vertices.push(vertex)
      for (let i = vertexStart[vertex]!; i < vertexStart[vertex + 1]!; i++) {
        const j = atVertex[i]!
        if (j === except || !(gate[j]! > 0)) continue
        const b = jointBlock[j]!
        if (tree.edges[b]!.length > 1) {
          const others = inflows(b)
          others[j - jointStart[b]!] = 0
          collect(b, block(b).cut(j - jointStart[b]!, others))
        } else if (single(b, j) <= inflow[otherJoint(b, j)]!) edges.push(onlyEdge(b, j))
        else pending.push(otherJoint(b, j))
      }
    }

    function collect(b: number, found: { edges: CutEdge[]; places: number[] }): void {
      edges.push(...found.edges)
      for (const place of found.places) pending.push(jointStart[b]! + place)
    }
  }
}
