import { describe, expect, it } from 'vitest'
import { balance } from '../../../engine/math/balance'
import { simplex } from '../../../engine/math/simplex'
import { Random } from '../../reference/random'

/** Random arcs between a few vertices: loops, doubles, rings, and now and then an arc without an end. */
function random(seed: number) {
  const source = new Random(seed)
  const draw = (): number => source.unit()
  const n = 2 + Math.floor(draw() * 5)
  const k = 1 + Math.floor(draw() * 14)
  const vertex = (): number => Math.floor(draw() * n)
  const whole = draw() < 0.5
  const bound = (): number => {
    const kind = draw()
    if (kind < 0.25) return 0
    if (kind < 0.33) return Number.POSITIVE_INFINITY
    return whole ? Math.floor(draw() * 20) : draw() * 100
  }
  return {
    n,
    from: Int32Array.from({ length: k }, vertex),
    to: Int32Array.from({ length: k }, vertex),
    low: Float64Array.from({ length: k }, () => -bound() + 0),
    high: Float64Array.from({ length: k }, bound),
    objective: Float64Array.from({ length: k }, () => {
      const kind = draw()
      if (kind < 0.2) return 0
      return whole ? Math.floor(draw() * 5) - 2 : draw() * 2 - 1
    }),
  }
}

describe('extremes of balanced flows', () => {
  it('are those of a linear program over all vertices, on 3,000 random sets of arcs', () => {
    const seen = { finite: 0, endless: 0 }
    for (let seed = 1; seed <= 3000; seed++) {
      const { n, from, to, low, high, objective } = random(seed)
      const k = from.length
      const matrix = new Float64Array(n * k)
      for (let i = 0; i < k; i++) {
        matrix[from[i]! * k + i]! -= 1
        matrix[to[i]! * k + i]! += 1
      }
      const plain = simplex({
        rowCount: n,
        columnCount: k,
        matrix,
        rhs: new Float64Array(n),
        lower: low,
        upper: high,
      })(objective)
      const { value, x } = balance(n, from, to, low, high)(objective)
      if (plain.status === 'unbounded') {
        seen.endless++
        expect(value).toBe(Number.POSITIVE_INFINITY)
        continue
      }
      if (plain.status !== 'optimal') throw new Error(plain.status)
      seen.finite++
      expect(Math.abs(value - plain.value)).toBeLessThan(1e-8 * (1 + Math.abs(value)))
      // The witness is one: within bounds, balanced, and worth the value.
      const sum = new Float64Array(n)
      let worth = 0
      for (let i = 0; i < k; i++) {
        expect(x[i]).toBeGreaterThanOrEqual(low[i]! - 1e-9)
        expect(x[i]).toBeLessThanOrEqual(high[i]! + 1e-9)
        sum[from[i]!]! -= x[i]!
        sum[to[i]!]! += x[i]!
        worth += objective[i]! * x[i]!
      }
      for (const s of sum) expect(Math.abs(s)).toBeLessThan(1e-7)
      expect(Math.abs(worth - value)).toBeLessThan(1e-7 * (1 + Math.abs(value)))
    }
    expect(seen.finite).toBeGreaterThan(1000)
    expect(seen.endless).toBeGreaterThan(300)
  })

  it('leaves at 0 what does not matter', () => {
    // Two loads and a battery: the figure counts the first load only.
    const { value, x } = balance(
      2,
      Int32Array.of(0, 0, 0),
      Int32Array.of(1, 1, 1),
      Float64Array.of(-10, -5, -20),
      Float64Array.of(0, 0, 100),
    )(Float64Array.of(-1, 0, 0))
    expect(value).toBe(10)
    expect([...x]).toEqual([-10, 0, 10])
  })

  it('takes rounding between equal gains for equal, however large the bounds', () => {
    const endless = Number.POSITIVE_INFINITY
    const { value } = balance(
      2,
      Int32Array.of(0, 0),
      Int32Array.of(1, 1),
      Float64Array.of(-endless, -endless),
      Float64Array.of(endless, endless),
    )(Float64Array.of(0.3, 0.1 + 0.2))
    expect(value).toBeLessThan(1e-9)
  })
})
