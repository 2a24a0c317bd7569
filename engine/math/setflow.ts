import type { CutEdge } from './blockflow'
import { type GateCut, gateCuts } from './gatecut'
import { gatesOf, type Supplied } from './gates'
import { graphOf } from './graph'
import { crossing, maxFlow } from './maxflow'

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
 * Flow from all supplies of a network into a set of its vertices. Only the part of the block tree that spans the
 * set is solved as a flow; what hangs off it comes in through its gates. Prepared once for many sets.
 */
export function setFlows(net: Supplied): (set: ReadonlyMap<number, Drawing>) => SetFlow {
  const { graph, forward, backward } = net
  const gates = gatesOf(net)
  const cuts = gateCuts(net, gates)
  const { tree, gate } = gates
  const { jointStart, jointVertex, jointBlock, vertexStart, atVertex, top } = tree
  /** Block that each vertex hangs below; −1 at a root. */
  const below = new Int32Array(graph.vertexCount).fill(-1)
  for (let j = 0; j < jointVertex.length; j++)
    if (top[jointBlock[j]!] !== j) below[jointVertex[j]!] = jointBlock[j]!

  return (set) => {
    const spanning = new Set<number>()
    const place = new Map<number, number>()
    const reach = (v: number): number => {
      let k = place.get(v)
      if (k === undefined) {
        k = place.size
        place.set(v, k)
      }
      return k
    }
    for (const v of set.keys()) {
      reach(v)
      for (let b = below[v]!; b !== -1 && !spanning.has(b); b = below[jointVertex[top[b]!]!]!) spanning.add(b)
    }
    const edges: number[] = []
    for (const b of spanning) {
      for (const e of tree.edges[b]!) edges.push(e)
      for (let j = jointStart[b]!; j < jointStart[b + 1]!; j++) reach(jointVertex[j]!)
    }
    const vertices = [...place.keys()]
    const source = vertices.length
    const sink = source + 1
    const tail = edges.map((e) => reach(graph.tail[e]!))
    const head = edges.map((e) => reach(graph.head[e]!))
    const out = edges.map((e) => forward[e]!)
    const back = edges.map((e) => backward[e]!)
    vertices.forEach((v, k) => {
      const own = set.get(v)
      let supply = own ? own.supply : net.supply[v]!
      for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++)
        if (!spanning.has(jointBlock[atVertex[i]!]!)) supply += gate[atVertex[i]!]!
      tail.push(source, k)
      head.push(k, sink)
      out.push(supply, own ? own.draw : 0)
      back.push(0, 0)
    })
    const g = graphOf(sink + 1, Int32Array.from(tail), Int32Array.from(head))
    const capacity = Float64Array.from(out)
    const reverse = Float64Array.from(back)
    const { value, sinkSide } = maxFlow(g, capacity, reverse, source, sink)
    const draws: number[] = []
    const cut: GateCut = { edges: [], vertices: [] }
    if (value === Number.POSITIVE_INFINITY) return { value, edges: [], supplies: [], draws }
    edges.forEach((edge, i) => {
      if (crossing(g, capacity, reverse, sinkSide, i) > 0)
        cut.edges.push({ edge, towards: sinkSide[head[i]!] === 1 ? 'head' : 'tail' })
    })
    vertices.forEach((v, k) => {
      if (sinkSide[k] === 0) {
        if (set.has(v) && set.get(v)!.draw > 0) draws.push(v)
      } else cuts.around(v, (b) => !spanning.has(b), cut)
    })
    return { value, edges: cut.edges, supplies: cut.vertices, draws }
  }
}
