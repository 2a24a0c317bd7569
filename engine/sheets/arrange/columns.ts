import type { Millimetres } from '../../units'
import { exchange } from './exchange'
import { otherEnd, otherY, ownY, type Plan } from './graph'
import { GRID, type Stack, snapUp } from './stack'

const snap = (mm: Millimetres): Millimetres => Math.round(mm / GRID) * GRID

/** Which neighbours a sweep listens to. */
type Listen = 'left' | 'right' | 'both'
const SWEEPS: readonly Listen[] = ['left', 'right', 'left', 'right', 'left', 'both', 'both']

/**
 * Orders the parts of each column and sets their tops: sweeps to the right and back again, each part wanting the
 * height at which its links run straight, the wishes of a column met together as nearly as their order allows.
 * Columns that are `isFixed` keep their order. Median sweeps: P. Eades and N. Wormald, 1994.
 */
export function stackColumns(plan: Plan, s: Stack, isFixed: (column: number) => boolean): void {
  const columnOf = new Map<number, number>()
  s.columns.forEach((column, c) => {
    for (const i of column) columnOf.set(i, c)
    settle(plan, s, column, () => null, isFixed(c))
  })
  SWEEPS.forEach((listen, sweep) => {
    const order = s.columns.map((_, c) => c)
    if (sweep % 2 === 1) order.reverse()
    for (const c of order) {
      const counts = (n: number): boolean =>
        listen === 'both' ? columnOf.get(n) !== c : columnOf.get(n)! < c === (listen === 'left')
      const wish = (i: number): Millimetres | null =>
        wishOf(plan, s, i, (n) => columnOf.has(n) && columnOf.get(n) !== c && counts(n), listen === 'both')
      const column = s.columns[c]!
      if (!isFixed(c) && listen !== 'both') {
        const wishes = new Map(column.map((i) => [i, (wish(i) ?? s.top.get(i)!) + plan.parts[i]!.h / 2]))
        column.sort((a, b) => wishes.get(a)! - wishes.get(b)! || a - b)
      }
      settle(plan, s, column, wish, isFixed(c))
      if (isFixed(c)) continue
      const sideOf = (n: number): 'left' | 'right' | null => {
        const other = columnOf.get(n)
        return other === undefined || other === c ? null : other < c ? 'left' : 'right'
      }
      if (exchange(plan, s, column, sideOf)) settle(plan, s, column, wish, false)
    }
  })
}

/**
 * The top at which a part's links run straight: the median over their weight, or, to finish with, the one at which
 * the most weight runs straight.
 */
function wishOf(
  plan: Plan,
  s: Stack,
  part: number,
  counts: (other: number) => boolean,
  isFinish: boolean,
): Millimetres | null {
  const tops = plan.at[part]!.filter((l) => counts(otherEnd(l, part))).map((l) => ({
    at: s.top.get(otherEnd(l, part))! + otherY(l, part) - ownY(l, part),
    weight: l.weight,
  }))
  if (tops.length === 0) return null
  const now = s.top.get(part)!
  return isFinish ? straightest(tops, now) : median(tops)
}

interface Wish {
  readonly at: Millimetres
  readonly weight: number
}

function median(wishes: Wish[]): Millimetres {
  wishes.sort((a, b) => a.at - b.at)
  const half = wishes.reduce((sum, v) => sum + v.weight, 0) / 2
  let sum = 0
  for (const v of wishes) {
    sum += v.weight
    if (sum >= half) return v.at
  }
  return wishes.at(-1)!.at
}

/** The wish with the most weight; of equals the nearest to where the part is now. */
function straightest(wishes: readonly Wish[], now: Millimetres): Millimetres {
  const weightAt = (at: Millimetres): number =>
    wishes.reduce((sum, v) => sum + (Math.abs(v.at - at) < GRID / 2 ? v.weight : 0), 0)
  return wishes.reduce((best, { at }) => {
    const gain = weightAt(at) - weightAt(best)
    return gain > 0 || (gain === 0 && Math.abs(at - now) < Math.abs(best - now)) ? at : best
  }, wishes[0]!.at)
}

/**
 * Tops of a column in its order, as near to the wishes as the heights and gaps allow: isotonic regression by
 * pooling adjacent violators (M. Ayer and others, 1955). Parts without a wish follow those above. A rigid column
 * is moved as a whole.
 */
function settle(
  plan: Plan,
  s: Stack,
  column: readonly number[],
  wish: (i: number) => Millimetres | null,
  isRigid: boolean,
): void {
  let offset = 0
  const pools: { sum: number; weight: number; parts: { i: number; offset: number }[] }[] = []
  for (const i of column) {
    const wanted = wish(i)
    const weight = wanted === null ? 0.001 : 1
    const at = wanted ?? s.top.get(i) ?? offset
    pools.push({ sum: (at - offset) * weight, weight, parts: [{ i, offset }] })
    offset += plan.parts[i]!.h + s.gap(i)
    while (pools.length > 1) {
      const [a, b] = [pools.at(-2)!, pools.at(-1)!]
      if (!isRigid && a.sum / a.weight <= b.sum / b.weight) break
      pools.splice(-2, 2, {
        sum: a.sum + b.sum,
        weight: a.weight + b.weight,
        parts: [...a.parts, ...b.parts],
      })
    }
  }
  for (const pool of pools)
    for (const p of pool.parts) s.top.set(p.i, snap(pool.sum / pool.weight) + snapUp(p.offset))
}
