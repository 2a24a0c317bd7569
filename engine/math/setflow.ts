import type { CutEdge } from './blockflow'
import { type GateCut, gateCuts } from './gatecut'
import { gatesOf, type Supplied } from './gates'
import { graphOf } from './graph'
import { crossing, maxFlow } from './maxflow'
import { spans } from './span'

/** What a vertex of the set draws, A, and what it still supplies to others in the set. */
export interface Drawing {
  readonly draw: number
  readonly supply: number
}

export interface SetFlow {
  /** Infinity when unlimited; then nothing else is filled. */
  readonly value: number
  /** The cut nearest the set: edges, vertices whose supply is drawn whole, and vertices that draw all they can. */
  readonly edges: readonly CutEdge[]
  readonly supplies: readonly number[]
  readonly draws: readonly number[]
}

/**
 * Flow from all supplies of a network into a set of its vertices. Only the part of the block tree between the members
 * of the set is solved as a flow; what hangs off it comes in through its gates. Prepared once for many sets.
 */
export function setFlows(net: Supplied): (set: ReadonlyMap<number, Drawing>) => SetFlow {
  const { graph, forward, backward } = net
  const gates = gatesOf(net)
  const cuts = gateCuts(net, gates)
  const { tree, gate } = gates
  const { jointStart, jointVertex, vertexStart, atVertex, jointBlock } = tree
  const spanningOf = spans(tree, graph.vertexCount)

  const place = new Int32Array(graph.vertexCount).fill(-1)
  const isSpanning = new Uint8Array(tree.edges.length)
  return (set) => {
    if (!drawsAnything(set)) return { value: 0, edges: [], supplies: [], draws: [] }
    const vertices: number[] = []
    const reach = (v: number): void => {
      if (place[v] !== -1) return
      place[v] = vertices.length
      vertices.push(v)
    }
    for (const v of set.keys()) reach(v)
    const spanning = spanningOf(set)
    for (const b of spanning) isSpanning[b] = 1
    let edgeCount = 0
    for (const b of spanning) {
      edgeCount += tree.edges[b]!.length
      for (let j = jointStart[b]!; j < jointStart[b + 1]!; j++) reach(jointVertex[j]!)
    }
    const edges = new Int32Array(edgeCount)
    let filled = 0
    for (const b of spanning) {
      edges.set(tree.edges[b]!, filled)
      filled += tree.edges[b]!.length
    }
    const source = vertices.length
    const sink = source + 1
    const count = edgeCount + 2 * source
    const tail = new Int32Array(count)
    const head = new Int32Array(count)
    const capacity = new Float64Array(count)
    const reverse = new Float64Array(count)
    for (let i = 0; i < edgeCount; i++) {
      const e = edges[i]!
      tail[i] = place[graph.tail[e]!]!
      head[i] = place[graph.head[e]!]!
      capacity[i] = forward[e]!
      reverse[i] = backward[e]!
    }
    for (let k = 0; k < source; k++) {
      const v = vertices[k]!
      const own = set.get(v)
      let supply = own ? own.supply : net.supply[v]!
      for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++)
        if (isSpanning[jointBlock[atVertex[i]!]!] === 0) supply += gate[atVertex[i]!]!
      const into = edgeCount + 2 * k
      tail[into] = source
      head[into] = k
      capacity[into] = supply
      tail[into + 1] = k
      head[into + 1] = sink
      capacity[into + 1] = own ? own.draw : 0
      place[v] = -1
    }
    for (const b of spanning) isSpanning[b] = 0
    const g = graphOf(sink + 1, tail, head)
    const { value, sinkSide } = maxFlow(g, capacity, reverse, source, sink)
    const draws: number[] = []
    const cut: GateCut = { edges: [], vertices: [] }
    if (value === Number.POSITIVE_INFINITY) return { value, edges: [], supplies: [], draws }
    const inside = new Set(spanning)
    edges.forEach((edge, i) => {
      if (crossing(g, capacity, reverse, sinkSide, i) > 0)
        cut.edges.push({ edge, towards: sinkSide[head[i]!] === 1 ? 'head' : 'tail' })
    })
    vertices.forEach((v, k) => {
      if (sinkSide[k] === 0) {
        if (set.has(v) && set.get(v)!.draw > 0) draws.push(v)
      } else cuts.around(v, (b) => !inside.has(b), cut)
    })
    return { value, edges: cut.edges, supplies: cut.vertices, draws }
  }
}

function drawsAnything(set: ReadonlyMap<number, Drawing>): boolean {
  for (const { draw } of set.values()) if (draw > 0) return true
  return false
}
