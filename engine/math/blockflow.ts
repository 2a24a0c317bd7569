import { BRIDGE, blocksOf } from './blocks'
import { components } from './components'
import { type Graph, graphOf } from './graph'
import { crossing, type Flow, maxFlow } from './maxflow'

/** Edges with a capacity each way, A: tail → head `forward`, head → tail `backward`; Infinity is 'unlimited'. */
export interface Capacities {
  readonly graph: Graph
  readonly forward: Float64Array
  readonly backward: Float64Array
}

/** An edge that a minimum cut goes through, and the way the flow takes it. */
export interface CutEdge {
  readonly edge: number
  readonly towards: 'tail' | 'head'
}

/** Flow inside one block of a network. A place is a position in the block's list of vertices. */
export interface BlockFlow {
  /** Places joined by edges without limit share a cluster. */
  readonly cluster: Int32Array
  /** Does the cluster of this edge fall apart when the edge is taken out? */
  splits(edge: number): boolean
  /** Greatest flow into a place from what is supplied at the places, with edge `without` taken out. */
  into(place: number, supply: Float64Array, without?: number): number
  /** The cut nearest the place: edges that limit, and places whose whole supply is drawn. */
  cut(place: number, supply: Float64Array, without?: number): { edges: CutEdge[]; places: number[] }
}

/**
 * Prepares a block once for many flows: what unlimited edges join twice over is drawn together, so that only
 * limits and unlimited edges that can still part something remain. O(edges).
 */
export function blockFlow(net: Capacities, edges: readonly number[], vertices: readonly number[]): BlockFlow {
  const { graph, forward, backward } = net
  const placeOf = new Map<number, number>()
  vertices.forEach((v, k) => {
    placeOf.set(v, k)
  })
  const ends = (list: readonly number[], end: Int32Array): Int32Array =>
    Int32Array.from(list, (e) => placeOf.get(end[e]!)!)
  const isOpen = (e: number): boolean =>
    forward[e] === Number.POSITIVE_INFINITY && backward[e] === Number.POSITIVE_INFINITY

  const open = edges.filter(isOpen)
  const openGraph = graphOf(vertices.length, ends(open, graph.tail), ends(open, graph.head))
  const cluster = components(openGraph).of
  const openBlocks = blocksOf(openGraph).of
  const parting = new Set(open.filter((_, i) => openBlocks[i] === BRIDGE))
  const firm = open.filter((e) => !parting.has(e))
  const group = components(graphOf(vertices.length, ends(firm, graph.tail), ends(firm, graph.head)))

  const place = (v: number): number => group.of[placeOf.get(v)!]!
  const kept = edges.filter((e) => place(graph.tail[e]!) !== place(graph.head[e]!))
  const k = kept.length
  const source = group.count
  const tail = new Int32Array(k + group.count).fill(source)
  const head = new Int32Array(k + group.count)
  const out = new Float64Array(k + group.count)
  const back = new Float64Array(k + group.count)
  const keptAt = new Map<number, number>()
  kept.forEach((e, i) => {
    tail[i] = place(graph.tail[e]!)
    head[i] = place(graph.head[e]!)
    out[i] = forward[e]!
    back[i] = backward[e]!
    keptAt.set(e, i)
  })
  for (let i = 0; i < group.count; i++) head[k + i] = i
  const drawn = graphOf(source + 1, tail, head)

  const run = (to: number, supply: Float64Array, without?: number): Flow | null => {
    let any = false
    out.fill(0, k)
    for (let p = 0; p < supply.length; p++) {
      if (!(supply[p]! > 0)) continue
      out[k + group.of[p]!]! += supply[p]!
      any = true
    }
    const gone = without === undefined ? -1 : (keptAt.get(without) ?? -1)
    return any ? maxFlow(drawn, out, back, source, group.of[to]!, gone) : null
  }

  return {
    cluster,
    splits: (edge) => parting.has(edge),
    into: (to, supply, without) => run(to, supply, without)?.value ?? 0,
    cut(to, supply, without) {
      const side = run(to, supply, without)?.sinkSide
      if (!side) return { edges: [], places: [] }
      return {
        edges: kept.flatMap((edge, i) =>
          edge !== without && crossing(drawn, out, back, side, i) > 0
            ? [{ edge, towards: side[drawn.head[i]!] === 1 ? 'head' : 'tail' } as const]
            : [],
        ),
        places: vertices.flatMap((_, p) => (supply[p]! > 0 && side[group.of[p]!] === 1 ? [p] : [])),
      }
    },
  }
}
