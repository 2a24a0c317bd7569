import { describe, expect, it } from 'vitest'
import { isBattery } from '../../../engine/calc/galvanic'
import { type Prepared, prepare } from '../../../engine/calc/prepare'
import { upstreamOf } from '../../../engine/calc/upstream'
import { zonesOf } from '../../../engine/calc/zones'
import { randomNetwork } from '../../reference/networks'

/** Nodes that can be reached from some without passing a branch that is told. */
function reached(p: Prepared, from: readonly number[], passes: (e: number) => boolean): Set<number> {
  const seen = new Set(from)
  for (let before = -1; before < seen.size; ) {
    before = seen.size
    for (let e = 0; e < p.graph.edgeCount; e++) {
      const [u, v] = [p.graph.tail[e]!, p.graph.head[e]!]
      if (!passes(e) || seen.has(u) === seen.has(v)) continue
      seen.add(u).add(v)
    }
  }
  return seen
}

const hasBattery = (p: Prepared, nodes: ReadonlySet<number>): boolean =>
  p.form.devices.some((_, d) => isBattery(p, d) && (nodes.has(p.positive[d]!) || nodes.has(p.negative[d]!)))

/** The same in the plainest way: node by node, each question on its own. */
function plainly(p: Prepared, e: number): number[] {
  const isFuse = (b: number): boolean => p.isFuse[b] === 1
  const zone = (v: number): Set<number> => reached(p, [v], (b) => !isFuse(b))
  const at = (nodes: ReadonlySet<number>, b: number): boolean =>
    nodes.has(p.graph.tail[b]!) || nodes.has(p.graph.head[b]!)
  const [a, b] = [zone(p.graph.tail[e]!), zone(p.graph.head[e]!)]
  if (a.has(p.graph.head[e]!)) return []
  const fed = [a, b].filter((z) =>
    hasBattery(
      p,
      reached(p, [...z], (x) => x !== e),
    ),
  )
  if (fed.length !== 1) return []
  const [here] = fed
  return [...p.isFuse.keys()].filter((up) => {
    if (!isFuse(up) || up === e || !at(here!, up)) return false
    const far = here!.has(p.graph.tail[up]!) ? p.graph.head[up]! : p.graph.tail[up]!
    if (here!.has(far)) return false
    return hasBattery(
      p,
      reached(p, [far], (x) => !(isFuse(x) && at(here!, x))),
    )
  })
}

describe('the next devices towards the batteries', () => {
  it('are those of a plain search from every device, on 400 networks', () => {
    let some = 0
    for (let seed = 1; seed <= 400; seed++) {
      const p = prepare(randomNetwork(seed))
      const upstream = upstreamOf(p)
      for (let e = 0; e < p.graph.edgeCount; e++) {
        if (p.isFuse[e] !== 1) continue
        const found = upstream(e)
        expect([...found].sort(), `seed ${seed}, branch ${e}`).toEqual(plainly(p, e).sort())
        some += found.length
      }
    }
    expect(some).toBeGreaterThan(100)
  })

  it('zones hold what hangs together, and name each barrier at them once', () => {
    for (let seed = 1; seed <= 100; seed++) {
      const p = prepare(randomNetwork(seed))
      const zones = zonesOf(p, (e) => e % 3 === 0)
      for (let v = 0; v < p.graph.vertexCount; v++) {
        const nodes = reached(p, [v], (e) => e % 3 !== 0)
        const zone = zones.of[v]!
        for (let w = 0; w < p.graph.vertexCount; w++) expect(zones.of[w] === zone).toBe(nodes.has(w))
        expect(zones.hasBattery[zone] === 1).toBe(hasBattery(p, nodes))
        const barriers = Array.from({ length: p.graph.edgeCount }, (_, e) => e).filter(
          (e) => e % 3 === 0 && (nodes.has(p.graph.tail[e]!) || nodes.has(p.graph.head[e]!)),
        )
        expect([...zones.at[zone]!]).toEqual(barriers)
      }
    }
  })
})
