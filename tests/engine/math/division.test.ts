import { describe, expect, it } from 'vitest'
import { currentsFrom, divisionOf, sharesIn } from '../../../engine/math/division'
import { exactShares } from '../../reference/exact'
import { Random } from '../../reference/random'

describe('division of currents', () => {
  it('splits as conductances do, worked by hand', () => {
    // 1 mΩ beside 3 mΩ: three quarters and one quarter.
    const tail = Int32Array.of(0, 0)
    const head = Int32Array.of(1, 1)
    const d = divisionOf(Int32Array.of(0, 1), tail, head, Float64Array.of(0.001, 0.003))
    const out = new Float64Array(2)
    currentsFrom(d, 1, out)
    expect(out[0]).toBeCloseTo(-0.75, 15)
    expect(out[1]).toBeCloseTo(-0.25, 15)
    const shares = sharesIn(Int32Array.of(0, 1), tail, head, Float64Array.of(0.001, 0.003), 0)
    expect([...shares.share]).toEqual([0, -0.75])
  })

  it('keeps its accuracy with 1e-6 Ω beside 10 Ω, against whole-number loop analysis', () => {
    for (let seed = 1; seed <= 150; seed++) {
      const r = new Random(seed)
      const n = r.whole(2, 14)
      const ends: [number, number][] = []
      for (let v = 1; v < n; v++) ends.push([r.whole(0, v - 1), v])
      for (let k = r.whole(1, n); k > 0; k--) {
        const u = r.whole(0, n - 1)
        ends.push([u, (u + r.whole(1, n - 1)) % n])
      }
      const ohms = ends.map(() => (r.chance(0.5) ? r.pick([1e-6, 10]) : 10 ** r.between(-6, 1)))
      const { share } = exactShares({
        nodes: Array.from({ length: n }, (_, v) => `${v}`),
        branches: ends.map(([u, v], e) => ({
          id: `${e}`,
          from: `${u}`,
          to: `${v}`,
          resistance: ohms[e]!,
          kind: 'conductor',
        })),
        devices: [],
      })
      const edges = Int32Array.from(ends.keys())
      const tail = Int32Array.from(ends, (e) => e[0])
      const head = Int32Array.from(ends, (e) => e[1])
      const resistance = Float64Array.from(ohms)
      const d = divisionOf(edges, tail, head, resistance)
      const held = d.vertices[0]!
      const out = new Float64Array(ends.length)
      for (let v = 0; v < n; v++) {
        currentsFrom(d, d.place.get(v)!, out)
        for (let e = 0; e < ends.length; e++)
          expect(Math.abs(out[e]! - (share[e]![v]! - share[e]![held]!))).toBeLessThan(1e-13)
      }
      for (let e = 0; e < ends.length; e++) {
        const own = sharesIn(edges, tail, head, resistance, e)
        own.vertices.forEach((v, i) => {
          const want = share[e]![v]! - share[e]![tail[e]!]!
          expect(Math.abs(own.share[i]! - want)).toBeLessThan(1e-14)
        })
      }
    }
  })
})
