import { components } from './components'
import { graphOf } from './graph'
import { knapsack } from './knapsack'
import { peel } from './peel'
import { simplex } from './simplex'

/** The greatest value of a linear figure, and the flows that give it (all 0 in a part that has no end). */
export interface Extreme {
  /** Infinity where there is no end. */
  readonly value: number
  readonly x: Float64Array
}

/** Thrown where the program of a ring of pairs ends without a verdict. */
export class NoConvergence extends Error {}

/**
 * Flows x on arcs `from` → `to` between vertices, low ≤ x ≤ high (low ≤ 0 ≤ high, either may be infinite), as much
 * in as out at every vertex: what device currents may do together, one balance a net. Prepared once; the
 * answer maximises one objective after another over the arcs (minimise by turning the signs). Coefficients that
 * differ by less than `rounding` count as equal: without it, rounding between two unlimited arcs would have no end.
 *
 * Pairs of vertices that no ring of pairs goes through balance each on their own, as a knapsack; rings go
 * through a small linear program. Expected time linear in the arcs where there are no rings.
 */
export function balance(
  vertexCount: number,
  from: Int32Array,
  to: Int32Array,
  low: Float64Array,
  high: Float64Array,
): (objective: Float64Array, rounding?: number) => Extreme {
  const { loops, pairs, rings } = netPairs(vertexCount, from, to)
  const solvers = rings.map((arcs) => ringSolver(arcs, from, to, low, high))
  const ahead = from.map((u, i) => (u < to[i]! ? 1 : -1))
  const least = low.map((l, i) => (ahead[i] === 1 ? l : -high[i]!))
  const most = high.map((h, i) => (ahead[i] === 1 ? h : -low[i]!))
  const gain = new Float64Array(from.length)

  return (objective, rounding = 0) => {
    const x = new Float64Array(from.length)
    let value = 0
    for (const i of loops) {
      const c = objective[i]!
      if (Math.abs(c) <= rounding) continue
      x[i] = c > 0 ? high[i]! : low[i]!
      value += c * x[i]!
      if (!Number.isFinite(x[i]!)) x[i] = 0
    }
    for (let i = 0; i < gain.length; i++) gain[i] = objective[i]! * ahead[i]!
    for (const arcs of pairs) {
      value += knapsack(arcs, gain, least, most, x, rounding)
      for (const i of arcs) if (ahead[i] === -1) x[i] = -x[i]! + 0
    }
    for (const solve of solvers) value += solve(objective, x, rounding)
    return { value, x }
  }
}

/** Arcs that close on themselves; arcs by pair where the pair is in no ring; arcs of each connected set of rings. */
export function netPairs(
  n: number,
  from: Int32Array,
  to: Int32Array,
): { loops: number[]; pairs: Int32Array[]; rings: Int32Array[] } {
  const loops: number[] = []
  const byPair = new Map<number, number[]>()
  for (let i = 0; i < from.length; i++) {
    const u = Math.min(from[i]!, to[i]!)
    const v = Math.max(from[i]!, to[i]!)
    if (u === v) {
      loops.push(i)
      continue
    }
    const list = byPair.get(u * n + v)
    if (list) list.push(i)
    else byPair.set(u * n + v, [i])
  }
  const keys = [...byPair.keys()]
  const g = graphOf(
    n,
    Int32Array.from(keys, (key) => Math.floor(key / n)),
    Int32Array.from(keys, (key) => key % n),
  )
  const { outer } = peel(g, new Uint8Array(n))
  const { of } = components(g)
  const pairs: Int32Array[] = []
  const rings = new Map<number, number[]>()
  keys.forEach((key, e) => {
    const arcs = byPair.get(key)!
    if (outer[e] !== -1) pairs.push(Int32Array.from(arcs))
    else {
      const ring = rings.get(of[g.tail[e]!]!) ?? []
      ring.push(...arcs)
      rings.set(of[g.tail[e]!]!, ring)
    }
  })
  return { loops, pairs, rings: [...rings.values()].map((arcs) => Int32Array.from(arcs)) }
}

/** One balance row a vertex, but one: the last follows from the others. */
function ringSolver(
  arcs: Int32Array,
  from: Int32Array,
  to: Int32Array,
  low: Float64Array,
  high: Float64Array,
): (objective: Float64Array, x: Float64Array, rounding: number) => number {
  const row = new Map<number, number>()
  for (const i of arcs) for (const v of [from[i]!, to[i]!]) if (!row.has(v)) row.set(v, row.size)
  const rowCount = row.size - 1
  const columnCount = arcs.length
  const matrix = new Float64Array(rowCount * columnCount)
  arcs.forEach((i, j) => {
    const out = row.get(from[i]!)!
    const into = row.get(to[i]!)!
    if (out < rowCount) matrix[out * columnCount + j] = -1
    if (into < rowCount) matrix[into * columnCount + j] = 1
  })
  const solve = simplex({
    rowCount,
    columnCount,
    matrix,
    rhs: new Float64Array(rowCount),
    lower: Float64Array.from(arcs, (i) => low[i]!),
    upper: Float64Array.from(arcs, (i) => high[i]!),
  })
  return (objective, x, rounding) => {
    const grid = (c: number): number => (rounding > 0 ? Math.round(c / rounding) * rounding : c)
    const answer = solve(Float64Array.from(arcs, (i) => grid(objective[i]!)))
    if (answer.status === 'unbounded') return Number.POSITIVE_INFINITY
    if (answer.status !== 'optimal')
      throw new NoConvergence(`a balance of bounded flows ended as ${answer.status}`)
    arcs.forEach((i, j) => {
      x[i] = answer.x[j]!
    })
    return answer.value
  }
}
