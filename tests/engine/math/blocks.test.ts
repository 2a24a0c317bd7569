import { describe, expect, it } from 'vitest'
import { type Blocks, BRIDGE, blocksOf, SELF_LOOP } from '../../../engine/math/blocks'
import { type Graph, graphOf } from '../../../engine/math/graph'

const graph = (n: number, edges: readonly (readonly [number, number])[]): Graph =>
  graphOf(
    n,
    Int32Array.from(edges, (e) => e[0]),
    Int32Array.from(edges, (e) => e[1]),
  )

/** Vertices reachable from `from` without the vertices and edges left out. */
function reach(g: Graph, from: number, vertexOut: number, edgeOut: number): Set<number> {
  const seen = new Set([from])
  const queue = [from]
  for (let v = queue.pop(); v !== undefined; v = queue.pop())
    for (let i = g.start[v]!; i < g.start[v + 1]!; i++) {
      const w = g.far[i]!
      if (g.edge[i] === edgeOut || w === vertexOut || seen.has(w)) continue
      seen.add(w)
      queue.push(w)
    }
  return seen
}

/** The definition: a bridge's ends part without it; two edges share a block when no one vertex parts them. */
function checkByDefinition(g: Graph, b: Blocks): void {
  for (let e = 0; e < g.edgeCount; e++) {
    const [u, v] = [g.tail[e]!, g.head[e]!]
    if (u === v) expect(b.of[e]).toBe(SELF_LOOP)
    else expect(b.of[e] === BRIDGE).toBe(!reach(g, u, -1, e).has(v))
  }
  for (let e = 0; e < g.edgeCount; e++)
    for (let f = e + 1; f < g.edgeCount; f++) {
      if (b.of[e]! < 0 || b.of[f]! < 0) continue
      expect(b.of[e] === b.of[f]).toBe(together(g, e, f))
    }
  for (let v = 0; v < g.vertexCount; v++) {
    expect(b.order[b.rank[v]!]).toBe(v)
    const t = b.top[v]!
    if (t === -1) continue
    expect(b.rank[t]!).toBeLessThan(b.rank[v]!)
    expect((b.bridge[v] === -1) !== (b.above[v] === -1)).toBe(true)
    if (b.bridge[v] !== -1) expect([g.tail[b.bridge[v]!], g.head[b.bridge[v]!]].sort()).toEqual([t, v].sort())
  }
}

/** Same block: still joined, by some of their ends, whichever single vertex is taken out. */
function together(g: Graph, e: number, f: number): boolean {
  for (let cut = 0; cut < g.vertexCount; cut++) {
    const from = [g.tail[e]!, g.head[e]!].find((v) => v !== cut)!
    const to = [g.tail[f]!, g.head[f]!].find((v) => v !== cut)!
    if (!reach(g, from, cut, -1).has(to)) return false
  }
  return true
}

describe('blocks', () => {
  it('takes parallel edges for a block and a self-loop for neither', () => {
    const b = blocksOf(
      graph(3, [
        [0, 1],
        [1, 0],
        [1, 2],
        [2, 2],
      ]),
    )
    expect([...b.of]).toEqual([0, 0, BRIDGE, SELF_LOOP])
    expect(b.bridge[2]).toBe(2)
    expect(b.above[1]).toBe(0)
  })

  it('parts two rings that share one vertex', () => {
    const b = blocksOf(
      graph(5, [
        [0, 1],
        [1, 2],
        [2, 0],
        [2, 3],
        [3, 4],
        [4, 2],
      ]),
    )
    expect(b.count).toBe(2)
    expect(b.of[0]).not.toBe(b.of[3])
    expect([b.top[3], b.top[4]]).toEqual([2, 2])
  })

  it('agrees with the definition on 300 random multigraphs', () => {
    let s = 7
    const random = (): number => {
      s = (Math.imul(s, 1664525) + 1013904223) >>> 0
      return s / 4294967296
    }
    for (let round = 0; round < 300; round++) {
      const n = 1 + Math.floor(random() * 9)
      const g = graph(
        n,
        Array.from({ length: Math.floor(random() * 14) }, () => [
          Math.floor(random() * n),
          Math.floor(random() * n),
        ]),
      )
      checkByDefinition(g, blocksOf(g))
    }
  })

  it('walks a chain of 20,000 and a ring of 20,000', () => {
    const n = 20_000
    const chain = Array.from({ length: n - 1 }, (_, i) => [i, i + 1] as const)
    expect(blocksOf(graph(n, chain)).count).toBe(0)
    const ring = blocksOf(graph(n, [...chain, [n - 1, 0]]))
    expect(ring.count).toBe(1)
    expect(ring.edge.length).toBe(n)
  })
})
