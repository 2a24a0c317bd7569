import type { Blocks } from '../math/blocks'
import { type Drawing, type SetFlow, setFlows } from '../math/setflow'
import type { Amps } from '../units'
import type { BridgeReturns } from './bridgeflow'
import { limitsOf, loopGraph, sourceLimit } from './loop'
import { type ByNet, together, withMissing } from './netgraph'
import type { Prepared } from './prepare'
import type { CutMember } from './protection'

interface Hanger {
  readonly device: number
  /** Rank, in the forest of blocks, of the node by which the device stands in the net. */
  readonly rank: number
  /** Vertex of its other terminal. */
  readonly vertex: number
  /** What it carries out of the net to that vertex, and into the net. */
  readonly out: Amps
  readonly in: Amps
}

/** A net without fuses of its own: only devices on the lesser side of the bridge and what spans them are looked at. */
export function unfusedReturns(p: Prepared, blocks: Blocks, content: ByNet, net: number): BridgeReturns {
  const { nets, devices } = together(p, content, net, () => false)
  const others = nets.filter((k) => k !== net)
  const loop = loopGraph(p, content, others, devices)
  const hangers: Hanger[] = []
  const loops: number[] = []
  for (const d of devices) {
    const low = loop.vertex.get(p.negative[d]!)
    const high = loop.vertex.get(p.positive[d]!)
    const fault = p.fault[d]!
    const any = Number.POSITIVE_INFINITY
    if (low === undefined && high === undefined) loops.push(d)
    else if (low === undefined)
      hangers.push({ device: d, rank: blocks.rank[p.negative[d]!]!, vertex: high!, out: fault, in: any })
    else if (high === undefined)
      hangers.push({ device: d, rank: blocks.rank[p.positive[d]!]!, vertex: low, out: any, in: fault })
  }
  hangers.sort((a, b) => a.rank - b.rank)
  const ranks = hangers.map((h) => h.rank)
  const below = vertexCounts(blocks)
  const at = new Map<number, number[]>()
  hangers.forEach((h, i) => {
    const list = at.get(h.vertex)
    if (list) list.push(i)
    else at.set(h.vertex, [i])
  })
  const solvers = new Map<string, ReturnType<typeof setFlows>>()
  const known = new Map<string, SetFlow>()

  return {
    flow(bridge, sense, missing) {
      const child =
        blocks.bridge[p.graph.tail[bridge]!] === bridge ? p.graph.tail[bridge]! : p.graph.head[bridge]!
      const first = blocks.rank[child]!
      const last = first + below[child]!
      const inside = (rank: number): boolean => rank >= first && rank < last
      const from = lowerBound(ranks, first)
      const to = lowerBound(ranks, last)
      /** Does the current come up through the bridge, so that the devices below put it into their side? */
      const upwards = (child === p.graph.tail[bridge]) === (sense === 'forward')
      const few = to - from <= hangers.length - (to - from)
      const isMember = (i: number): boolean => (i >= from && i < to) === few
      const into = upwards === few
      const key = `${from} ${to} ${into} ${missing}`
      let round = known.get(key)
      if (!round) {
        round = solverOf(into, missing)(setOf(from, to, few, into))
        known.set(key, round)
      }
      const spanning = loops.flatMap((d) => {
        const a = inside(blocks.rank[p.negative[d]!]!)
        const b = inside(blocks.rank[p.positive[d]!]!)
        if (a === b) return []
        return [{ device: d, amps: b === upwards ? p.fault[d]! : Number.POSITIVE_INFINITY }]
      })
      const amps = spanning.reduce((sum, s) => sum + s.amps, round.value)
      const limiting = (): CutMember[] => [
        ...limitsOf(p, loop, round.edges),
        ...[
          ...round.supplies.flatMap((v) => at.get(v)!.filter((i) => !isMember(i))).map((i) => hangers[i]!),
          ...round.draws.flatMap((v) => at.get(v)!.filter(isMember)).map((i) => hangers[i]!),
        ].flatMap((h) => sourceLimit(p, h.device)),
        ...spanning.flatMap((s) => sourceLimit(p, s.device)),
      ]
      return { amps, limiting }
    },
  }

  /** Flow into the set's devices and on into their side of the net, or the other way round with all turned over. */
  function solverOf(into: boolean, missing: number): ReturnType<typeof setFlows> {
    const key = `${into} ${missing}`
    let solver = solvers.get(key)
    if (!solver) {
      const supply = new Float64Array(loop.nodes.length)
      for (const h of hangers) supply[h.vertex]! += into ? h.out : h.in
      const forward = withMissing(loop.forward, missing)
      const backward = withMissing(loop.backward, missing)
      solver = setFlows({
        graph: loop.graph,
        forward: into ? forward : backward,
        backward: into ? backward : forward,
        supply,
      })
      solvers.set(key, solver)
    }
    return solver
  }

  function setOf(from: number, to: number, few: boolean, into: boolean): Map<number, Drawing> {
    const members: number[] = []
    for (let i = few ? from : 0; i < (few ? to : from); i++) members.push(i)
    if (!few) for (let i = to; i < hangers.length; i++) members.push(i)
    const member = new Set(members)
    const set = new Map<number, Drawing>()
    for (const i of members) {
      const { vertex } = hangers[i]!
      if (set.has(vertex)) continue
      let draw = 0
      let supply = 0
      for (const k of at.get(vertex)!) {
        const h = hangers[k]!
        if (member.has(k)) draw += into ? h.in : h.out
        else supply += into ? h.out : h.in
      }
      set.set(vertex, { draw, supply })
    }
    return set
  }
}

/** Vertices at or below each vertex of the forest of blocks: they follow it in rank. */
function vertexCounts(blocks: Blocks): Int32Array {
  const count = new Int32Array(blocks.order.length).fill(1)
  for (let i = blocks.order.length - 1; i >= 0; i--) {
    const v = blocks.order[i]!
    if (blocks.top[v] !== -1) count[blocks.top[v]!]! += count[v]!
  }
  return count
}

/** First position whose rank is at least `rank`. */
function lowerBound(ranks: readonly number[], rank: number): number {
  let low = 0
  let high = ranks.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (ranks[middle]! < rank) low = middle + 1
    else high = middle
  }
  return low
}
