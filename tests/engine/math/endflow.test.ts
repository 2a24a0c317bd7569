import { describe, expect, it } from 'vitest'
import { endFlows } from '../../../engine/math/endflow'
import { type Graph, graphOf } from '../../../engine/math/graph'
import { crossing, maxFlow } from '../../../engine/math/maxflow'
import { type Drawing, setFlows } from '../../../engine/math/setflow'
import { Random } from '../../reference/random'

const INF = Number.POSITIVE_INFINITY

interface Case {
  readonly graph: Graph
  readonly forward: Float64Array
  readonly backward: Float64Array
  readonly supply: Float64Array
}

/** Trees with meshes here and there, edges without limit, with a limit, and with one each way. */
function randomCase(r: Random, unlimited: boolean): Case {
  const n = r.whole(1, 18)
  const tail: number[] = []
  const head: number[] = []
  for (let v = 1; v < n; v++)
    if (!r.chance(0.05)) {
      tail.push(v)
      head.push(r.chance(0.6) ? v - 1 : r.whole(0, v - 1))
    }
  for (let more = r.chance(0.2) ? 0 : r.whole(0, n); more > 0; more--) {
    tail.push(r.whole(0, n - 1))
    head.push(r.whole(0, n - 1))
  }
  const open = r.between(0.2, 0.9)
  const forward = new Float64Array(tail.length)
  const backward = new Float64Array(tail.length)
  for (let e = 0; e < tail.length; e++) {
    const limit = r.whole(0, 12)
    forward[e] = r.chance(open) ? INF : limit
    backward[e] = r.chance(0.9) ? forward[e]! : r.whole(0, 12)
  }
  const supply = Float64Array.from({ length: n }, () =>
    r.chance(0.7) ? 0 : unlimited && r.chance(0.4) ? INF : r.whole(1, 15),
  )
  return { graph: graphOf(n, Int32Array.from(tail), Int32Array.from(head)), forward, backward, supply }
}

/** The plain method: one flow over the whole network, from one source joined to every supply into one sink. */
function plain(c: Case, draws: ReadonlyMap<number, Drawing>, without: number) {
  const { graph } = c
  const n = graph.vertexCount
  const m = graph.edgeCount
  const vertices = Array.from({ length: n }, (_, v) => v)
  const own = (v: number): number => draws.get(v)?.supply ?? c.supply[v]!
  const g = graphOf(
    n + 2,
    Int32Array.of(...graph.tail, ...vertices.map(() => n), ...vertices),
    Int32Array.of(...graph.head, ...vertices, ...vertices.map(() => n + 1)),
  )
  const zeros = vertices.map(() => 0)
  const draw = vertices.map((v) => draws.get(v)?.draw ?? 0)
  const forward = Float64Array.of(...c.forward, ...vertices.map(own), ...draw)
  const backward = Float64Array.of(...c.backward, ...zeros, ...zeros)
  const { value, sinkSide } = maxFlow(g, forward, backward, n, n + 1, without)
  const crosses = (e: number): boolean => e !== without && crossing(g, forward, backward, sinkSide, e) > 0
  return {
    value,
    edges: Array.from({ length: m }, (_, e) => e).filter(crosses),
    vertices: vertices.filter((v) => crosses(m + v)),
    draws: vertices.filter((v) => crosses(m + n + v)),
  }
}

const sorted = (list: readonly number[]): number[] => [...list].sort((a, b) => a - b)

describe('flow into every edge end', () => {
  it('equals one flow for each end, value and nearest cut alike, on 1,500 networks', () => {
    let asked = 0
    let cuts = 0
    for (let seed = 1; seed <= 1500; seed++) {
      const c = randomCase(new Random(seed), seed % 3 === 0)
      const flows = endFlows(c)
      for (let e = 0; e < c.graph.edgeCount; e++) {
        if (c.forward[e] !== INF || c.backward[e] !== INF) continue
        for (const end of ['tail', 'head'] as const) {
          const v = c.graph[end][e]!
          const expected = plain(c, new Map([[v, { draw: INF, supply: c.supply[v]! }]]), e)
          expect(flows.into(e, end)).toBe(expected.value)
          asked++
          if (expected.value === INF) continue
          const cut = flows.cut(e, end)
          expect(sorted(cut.edges.map((k) => k.edge))).toEqual(expected.edges)
          expect(sorted(cut.vertices)).toEqual(expected.vertices)
          if (expected.value > 0) cuts++
        }
      }
    }
    expect(asked).toBeGreaterThan(10_000)
    expect(cuts).toBeGreaterThan(3_000)
  })

  it('sweeps a chain of 20,000 without recursion', () => {
    const n = 20_000
    const link = Int32Array.from({ length: n - 1 }, (_, i) => i)
    const forward = Float64Array.from({ length: n - 1 }, (_, i) => (i % 2 === 0 ? INF : 30_000 - i))
    const supply = new Float64Array(n)
    supply[0] = INF
    const flows = endFlows({
      graph: graphOf(
        n,
        link,
        link.map((i) => i + 1),
      ),
      forward,
      backward: forward,
      supply,
    })
    expect(flows.into(n - 2, 'tail')).toBe(30_000 - (n - 3))
    expect(flows.into(n - 2, 'head')).toBe(0)
    expect(flows.into(0, 'tail')).toBe(INF)
  })
})

describe('flow into a set of vertices', () => {
  it('equals one flow over the whole network, value and nearest cut alike, on 1,500 networks', () => {
    let cuts = 0
    for (let seed = 1; seed <= 1500; seed++) {
      const r = new Random(seed)
      const c = randomCase(r, seed % 3 === 0)
      const solve = setFlows(c)
      for (let k = 0; k < 3; k++) {
        const set = new Map<number, Drawing>()
        for (let i = r.whole(1, 4); i > 0; i--) {
          const v = r.whole(0, c.graph.vertexCount - 1)
          set.set(v, { draw: r.chance(0.4) ? INF : r.whole(0, 20), supply: r.chance(0.6) ? 0 : c.supply[v]! })
        }
        const expected = plain(c, set, -1)
        const ours = solve(set)
        expect(ours.value).toBe(expected.value)
        if (expected.value === INF) continue
        expect(sorted(ours.edges.map((x) => x.edge))).toEqual(expected.edges)
        expect(sorted(ours.draws)).toEqual(expected.draws)
        const supplies = ours.supplies.filter((v) => (set.get(v)?.supply ?? 1) > 0)
        expect(sorted(supplies)).toEqual(expected.vertices)
        if (expected.value > 0) cuts++
      }
    }
    expect(cuts).toBeGreaterThan(1_000)
  })
})
