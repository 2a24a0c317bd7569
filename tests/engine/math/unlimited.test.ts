import { describe, expect, it } from 'vitest'
import { greatestFlow } from '../../../engine/math/unlimited'
import { solveLp } from '../../reference/highs'
import { Random } from '../../reference/random'

const BIG = Number.POSITIVE_INFINITY

describe('greatest flow with unlimited arcs', () => {
  it('worked by hand: 5 A against no limit, then no limit against no limit', () => {
    const flow = (low: number): ReturnType<typeof greatestFlow> =>
      greatestFlow(
        2,
        Int32Array.of(0, 0),
        Int32Array.of(1, 1),
        Float64Array.of(0, low),
        Float64Array.of(BIG, 0),
      )
    expect(flow(-5)(Float64Array.of(0.5, 0.25))).toEqual({
      value: 1.25,
      x: Float64Array.of(5, -5),
      ray: undefined,
    })
    expect(flow(-BIG)(Float64Array.of(0.5, 0.25))).toEqual({
      value: BIG,
      x: Float64Array.of(0, 0),
      ray: Float64Array.of(1, -1),
    })
    expect(flow(-BIG)(Float64Array.of(0.5, 0.5 + 1e-14))).toMatchObject({ value: 0, ray: undefined })
  })

  it('agrees with a general-purpose solver on 1,500 random graphs', () => {
    let endless = 0
    for (let seed = 1; seed <= 1500; seed++) {
      const r = new Random(seed)
      const n = r.whole(2, 5)
      const arcs = Array.from({ length: r.whole(2, 12) }, () => ({
        from: r.whole(0, n - 1),
        to: r.whole(0, n - 1),
        low: r.chance(0.2) ? -BIG : -r.whole(0, 9),
        high: r.chance(0.2) ? BIG : r.whole(0, 9),
        gain: r.pick([0, 1, -1, 0.25, r.between(-1, 1)]),
      }))
      const found = greatestFlow(
        n,
        Int32Array.from(arcs, (a) => a.from),
        Int32Array.from(arcs, (a) => a.to),
        Float64Array.from(arcs, (a) => a.low),
        Float64Array.from(arcs, (a) => a.high),
      )(Float64Array.from(arcs, (a) => a.gain))
      const want = solveLp({
        sense: 'max',
        objective: arcs.map((a) => a.gain),
        bounds: arcs.map((a) => [a.low, a.high]),
        rows: Array.from({ length: n }, (_, v) => {
          const at = arcs.flatMap((a, i) => (a.from !== a.to && (a.from === v || a.to === v) ? [i] : []))
          return { lower: 0, upper: 0, columns: at, values: at.map((i) => (arcs[i]!.to === v ? 1 : -1)) }
        }),
      })
      expect(found?.value === BIG, `seed ${seed}`).toBe(want.status === 'unbounded')
      if (want.status === 'optimal') expect(found?.value, `seed ${seed}`).toBeCloseTo(want.value, 7)
      else endless++
    }
    expect(endless).toBeGreaterThan(300)
  })
})
