import { describe, expect, it } from 'vitest'
import { type LinearAnswer, type LinearProgram, simplex } from '../../../engine/math/simplex'
import { solveLp } from '../../reference/highs'
import { Random } from '../../reference/random'

const INF = Number.POSITIVE_INFINITY

interface Made extends LinearProgram {
  readonly rows: number[][]
}

/** Built round a point that satisfies it, then spoilt in some of the cases; small whole numbers make it degenerate. */
function randomProgram(r: Random): Made {
  const m = r.whole(1, 7)
  const n = m + r.whole(0, 8)
  const whole = r.chance(0.5)
  const figure = (): number => (r.chance(0.4) ? 0 : whole ? r.whole(-3, 3) : r.between(-1, 1))
  const rows = Array.from({ length: m }, () => Array.from({ length: n }, figure))
  if (m > 2 && r.chance(0.3)) rows[0] = rows[1]!.map((x, j) => x + rows[2]![j]!)
  const point = Array.from({ length: n }, () => (whole ? r.whole(-2, 2) : r.between(-2, 2)))
  const slack = (): number => (r.chance(0.25) ? INF : r.chance(0.3) ? 0 : r.whole(1, 5))
  const lower = Float64Array.from(point, (x) => x - slack())
  const upper = Float64Array.from(point, (x) => x + slack())
  const rhs = Float64Array.from(rows, (row) => row.reduce((sum, a, j) => sum + a * point[j]!, 0))
  if (r.chance(0.25)) rhs[0]! += whole ? 1 : 0.7
  if (r.chance(0.25)) rhs.fill(0)
  return { rowCount: m, columnCount: n, matrix: Float64Array.from(rows.flat()), rhs, lower, upper, rows }
}

function byHighs(lp: Made, objective: ArrayLike<number>) {
  return solveLp({
    sense: 'max',
    objective,
    rows: lp.rows.map((values, i) => ({
      lower: lp.rhs[i]!,
      upper: lp.rhs[i]!,
      columns: values.map((_, j) => j),
      values,
    })),
    bounds: Array.from(lp.lower, (low, j) => [low, lp.upper[j]!] as const),
  })
}

/** Checks an answer by its certificate alone. */
function expectProof(lp: Made, objective: Float64Array, answer: LinearAnswer): void {
  const product = (x: ArrayLike<number>): number[] =>
    lp.rows.map((row) => row.reduce((sum, a, j) => sum + a * x[j]!, 0))
  if (answer.status === 'no-convergence') throw new Error('no convergence')
  if (answer.status === 'infeasible') {
    // Farkas: y·b > max of y·A·x within the bounds.
    let reach = 0
    for (let j = 0; j < lp.columnCount; j++) {
      const slope = lp.rows.reduce((sum, row, i) => sum + answer.dual[i]! * row[j]!, 0)
      if (Math.abs(slope) > 1e-9) reach += slope * (slope > 0 ? lp.upper[j]! : lp.lower[j]!)
    }
    expect(lp.rhs.reduce((sum, b, i) => sum + b * answer.dual[i]!, 0)).toBeGreaterThan(reach + 1e-9)
    return
  }
  product(answer.x).forEach((sum, i) => {
    expect(sum).toBeCloseTo(lp.rhs[i]!, 6)
  })
  answer.x.forEach((x, j) => {
    expect(x).toBeGreaterThanOrEqual(lp.lower[j]! - 1e-7)
    expect(x).toBeLessThanOrEqual(lp.upper[j]! + 1e-7)
  })
  if (answer.status === 'unbounded') {
    for (const sum of product(answer.ray)) expect(sum).toBeCloseTo(0, 6)
    answer.ray.forEach((d, j) => {
      if (d > 1e-9) expect(lp.upper[j]).toBe(INF)
      if (d < -1e-9) expect(lp.lower[j]).toBe(-INF)
    })
    expect(objective.reduce((sum, c, j) => sum + c * answer.ray[j]!, 0)).toBeGreaterThan(0)
    return
  }
  let bound = lp.rhs.reduce((sum, b, i) => sum + b * answer.dual[i]!, 0)
  answer.reduced.forEach((d, j) => {
    const slope = objective[j]! - lp.rows.reduce((sum, row, i) => sum + answer.dual[i]! * row[j]!, 0)
    expect(d).toBeCloseTo(slope, 9)
    if (Math.abs(d) > 1e-7) bound += d * (d > 0 ? lp.upper[j]! : lp.lower[j]!)
  })
  // Weak duality: no x does better than `bound`, and this one reaches it.
  expect(Math.abs(bound - answer.value)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(bound)))
}

describe('simplex', () => {
  it('equals HiGHS on 1,500 random programs with three objectives each, every answer proved', () => {
    const seen = { optimal: 0, unbounded: 0, infeasible: 0 }
    for (let seed = 1; seed <= 1500; seed++) {
      const r = new Random(seed)
      const lp = randomProgram(r)
      const solve = simplex(lp)
      for (let k = 0; k < 3; k++) {
        const objective = Float64Array.from({ length: lp.columnCount }, () =>
          r.chance(0.4) ? 0 : r.chance(0.5) ? r.whole(-3, 3) : r.between(-1, 1),
        )
        const ours = solve(objective)
        const theirs = byHighs(lp, objective)
        expect(ours.status).toBe(theirs.status)
        if (ours.status === 'optimal' && theirs.status === 'optimal')
          expect(Math.abs(ours.value - theirs.value)).toBeLessThanOrEqual(
            1e-6 * Math.max(1, Math.abs(theirs.value)),
          )
        expectProof(lp, objective, ours)
        seen[theirs.status]++
      }
    }
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(300)
  })

  it("comes out of Beale's program, on which pricing by largest cost alone can go round for ever", () => {
    // E. M. L. Beale, "Cycling in the dual simplex algorithm", 1955; optimum 1/20 (textbook value, from memory;
    // HiGHS confirms it here). Maximise ¾x1 − 150x2 + x3/50 − 6x4 with two rows ≤ 0 and x3 ≤ 1.
    const rows = [
      [1 / 4, -60, -1 / 25, 9, 1, 0, 0],
      [1 / 2, -90, -1 / 50, 3, 0, 1, 0],
      [0, 0, 1, 0, 0, 0, 1],
    ]
    const lp = {
      rowCount: 3,
      columnCount: 7,
      matrix: Float64Array.from(rows.flat()),
      rhs: Float64Array.of(0, 0, 1),
      lower: new Float64Array(7),
      upper: new Float64Array(7).fill(INF),
      rows,
    }
    const objective = Float64Array.of(3 / 4, -150, 1 / 50, -6, 0, 0, 0)
    const answer = simplex(lp)(objective)
    expectProof(lp, objective, answer)
    expect(answer.status === 'optimal' && answer.value).toBeCloseTo(1 / 20, 9)
    expect(byHighs(lp, objective)).toMatchObject({ status: 'optimal', value: expect.closeTo(1 / 20, 9) })
  })

  it('keeps its answers over hundreds of objectives in a row', () => {
    const r = new Random(5)
    const m = 25
    const n = 60
    const rows = Array.from({ length: m }, () =>
      Array.from({ length: n }, () => (r.chance(0.7) ? 0 : r.between(-1, 1))),
    )
    const lp = {
      rowCount: m,
      columnCount: n,
      matrix: Float64Array.from(rows.flat()),
      rhs: new Float64Array(m),
      lower: new Float64Array(n).fill(-10),
      upper: Float64Array.from({ length: n }, () => r.between(0, 20)),
      rows,
    }
    const solve = simplex(lp)
    for (let k = 0; k < 300; k++) {
      const objective = Float64Array.from({ length: n }, () => r.between(-1, 1))
      expectProof(lp, objective, solve(objective))
    }
  })

  it('refuses bounds that leave a column no value', () => {
    const lp = { rowCount: 0, columnCount: 1, matrix: new Float64Array(0), rhs: new Float64Array(0) }
    expect(() => simplex({ ...lp, lower: Float64Array.of(1), upper: Float64Array.of(0) })).toThrow(RangeError)
  })
})
