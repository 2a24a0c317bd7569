import { describe, expect, it } from 'vitest'
import { type Graph, graphOf } from '../../../engine/math/graph'
import { crossing, maxFlow } from '../../../engine/math/maxflow'
import { solveLp } from '../../reference/highs'
import { Random } from '../../reference/random'

interface Case {
  readonly g: Graph
  readonly forward: Float64Array
  readonly backward: Float64Array
}

/** Vertices 0 (source) to n − 1 (sink); self-loops, twins, dead ends, one-way edges, ties, zeros, unlimited edges. */
function randomCase(r: Random, vertices: number, edges: number, unlimited: number): Case {
  const end = () => Int32Array.from({ length: edges }, () => r.whole(0, vertices - 1))
  const capacity = (): number =>
    r.chance(unlimited)
      ? Number.POSITIVE_INFINITY
      : r.chance(0.2)
        ? 0
        : r.chance(0.5)
          ? r.whole(1, 9)
          : r.between(0.01, 200)
  const forward = Float64Array.from({ length: edges }, capacity)
  const backward = r.chance(0.5) ? forward.slice() : Float64Array.from({ length: edges }, capacity)
  return { g: graphOf(vertices, end(), end()), forward, backward }
}

function byHighs({ g, forward, backward }: Case, source: number, sink: number): number {
  const rows = Array.from({ length: g.vertexCount }, (_, v) => {
    const sum = new Map<number, number>()
    const add = (e: number, x: number) => sum.set(e, (sum.get(e) ?? 0) + x)
    for (let e = 0; e < g.edgeCount; e++) {
      if (g.tail[e] === v) add(e, -1)
      if (g.head[e] === v) add(e, 1)
    }
    return { v, columns: [...sum.keys()], values: [...sum.values()] }
  })
  const answer = solveLp({
    sense: 'max',
    objective: Array.from({ length: g.edgeCount }, (_, e) =>
      g.tail[e] === g.head[e] ? 0 : g.head[e] === sink ? 1 : g.tail[e] === sink ? -1 : 0,
    ),
    rows: rows
      .filter(({ v }) => v !== source && v !== sink)
      .map(({ columns, values }) => ({ lower: 0, upper: 0, columns, values })),
    bounds: Array.from({ length: g.edgeCount }, (_, e) => [-backward[e]!, forward[e]!] as const),
  })
  if (answer.status === 'infeasible') throw new Error('no flow is a flow')
  return answer.status === 'optimal' ? answer.value : Number.POSITIVE_INFINITY
}

function expectCertificate(c: Case, source: number, sink: number): number {
  const { g, forward, backward } = c
  const { value, flow, sinkSide } = maxFlow(g, forward, backward, source, sink)
  const out = new Float64Array(g.vertexCount)
  for (let e = 0; e < g.edgeCount; e++) {
    expect(flow[e]).toBeLessThanOrEqual(forward[e]! + 1e-9)
    expect(flow[e]).toBeGreaterThanOrEqual(-backward[e]! - 1e-9)
    out[g.tail[e]!]! += flow[e]!
    out[g.head[e]!]! -= flow[e]!
  }
  if (value === Number.POSITIVE_INFINITY) return value
  out.forEach((x, v) => {
    expect(x).toBeCloseTo(v === source ? value : v === sink ? -value : 0, 6)
  })
  expect([sinkSide[source], sinkSide[sink]]).toEqual([0, 1])
  let cut = 0
  for (let e = 0; e < g.edgeCount; e++) cut += crossing(g, forward, backward, sinkSide, e)
  expect(value).toBe(cut)
  return value
}

describe('maximum flow', () => {
  it('equals HiGHS on 600 random graphs, and its flow and cut prove it', () => {
    const seen = { finite: 0, unlimited: 0, zero: 0 }
    for (let seed = 1; seed <= 600; seed++) {
      const r = new Random(seed)
      const c = randomCase(r, r.whole(2, 12), r.whole(1, 30), r.chance(0.5) ? 0 : 0.2)
      const value = expectCertificate(c, 0, c.g.vertexCount - 1)
      const theirs = byHighs(c, 0, c.g.vertexCount - 1)
      if (value === Number.POSITIVE_INFINITY) expect(theirs).toBe(value)
      else expect(Math.abs(value - theirs)).toBeLessThanOrEqual(1e-6 * Math.max(1, theirs))
      seen[value === Number.POSITIVE_INFINITY ? 'unlimited' : value > 0 ? 'finite' : 'zero']++
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(50)
  })

  it('names the minimum cut with the fewest vertices on the sink side, by trying every cut', () => {
    let ties = 0
    for (let seed = 1; seed <= 300; seed++) {
      const r = new Random(seed)
      const n = r.whole(2, 7)
      const { g } = randomCase(r, n, r.whole(1, 12), 0)
      const forward = Float64Array.from({ length: g.edgeCount }, () => r.whole(0, 3))
      const { value, sinkSide } = maxFlow(g, forward, forward, 0, n - 1)
      const minima: number[] = []
      let least = Number.POSITIVE_INFINITY
      for (let side = 0; side < 1 << n; side++) {
        if (side & 1 || !((side >> (n - 1)) & 1)) continue
        const inside = Uint8Array.from({ length: n }, (_, v) => (side >> v) & 1)
        let cut = 0
        for (let e = 0; e < g.edgeCount; e++) cut += crossing(g, forward, forward, inside, e)
        if (cut < least) {
          least = cut
          minima.length = 0
        }
        if (cut === least) minima.push(side)
      }
      expect(value).toBe(least)
      // The smallest is inside every other: minimum cuts nest.
      expect(sinkSide.reduce((bits, s, v) => bits | (s << v), 0)).toBe(minima.reduce((a, b) => a & b))
      if (minima.length > 1) ties++
    }
    expect(ties).toBeGreaterThan(50)
  })

  it('takes an edge out when asked', () => {
    // 0 ─5─ 1 ─3─ 2 and 0 ─2─ 2: with all 3 + 2 = 5, without the direct edge 3.
    const g = graphOf(3, Int32Array.of(0, 1, 0), Int32Array.of(1, 2, 2))
    const c = Float64Array.of(5, 3, 2)
    expect(maxFlow(g, c, c, 0, 2).value).toBe(5)
    expect(maxFlow(g, c, c, 0, 2, 2).value).toBe(3)
  })

  it('is not led astray by rounding: 0.1 + 0.2 against 0.3', () => {
    // Two ways in (0.1 and 0.2) and one way out (0.3): the sums differ in the last place only, so both cuts are
    // minimum and the one nearest the sink is the way out.
    const g = graphOf(3, Int32Array.of(0, 0, 1), Int32Array.of(1, 1, 2))
    const c = Float64Array.of(0.1, 0.2, 0.3)
    const { sinkSide } = maxFlow(g, c, new Float64Array(3), 0, 2)
    expect([...sinkSide]).toEqual([0, 0, 1])
  })

  it('walks a chain of 20,000 without recursion', () => {
    const n = 20_000
    const g = graphOf(
      n,
      Int32Array.from({ length: n - 1 }, (_, i) => i),
      Int32Array.from({ length: n - 1 }, (_, i) => i + 1),
    )
    const c = Float64Array.from({ length: n - 1 }, (_, i) => 10 + (i % 7))
    expect(maxFlow(g, c, c, 0, n - 1).value).toBe(10)
  })

  it('refuses a source that is the sink', () => {
    const g = graphOf(1, new Int32Array(0), new Int32Array(0))
    expect(() => maxFlow(g, new Float64Array(0), new Float64Array(0), 0, 0)).toThrow(RangeError)
  })
})
