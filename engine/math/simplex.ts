/**
 * Maximise c·x with A·x = b and lower ≤ x ≤ upper; bounds may be infinite. Inequalities take a column of their
 * own. `matrix` is A row by row. Meant for the small dense programs of meshed networks: tens to a few hundred rows.
 */
export interface LinearProgram {
  readonly rowCount: number
  readonly columnCount: number
  readonly matrix: Float64Array
  readonly rhs: Float64Array
  readonly lower: Float64Array
  readonly upper: Float64Array
}

/** Every answer carries its proof, in terms of the program as given. */
export type LinearAnswer =
  /** `reduced` = c − Aᵀ·dual: above 0 only where x is at its upper bound, below 0 only at its lower. */
  | { status: 'optimal'; value: number; x: Float64Array; dual: Float64Array; reduced: Float64Array }
  /** From the feasible x one may go along `ray` for ever: A·ray = 0, c·ray > 0. */
  | { status: 'unbounded'; x: Float64Array; ray: Float64Array }
  /** dual·b exceeds the greatest value of dual·A·x within the bounds. */
  | { status: 'infeasible'; dual: Float64Array }
  | { status: 'no-convergence' }

const TOLERANCE = 1e-9
const SMALLEST_PIVOT = 1e-9
/** Steps without progress after which the choice of columns turns to Bland's, which cannot cycle. */
const PATIENCE = 40
const PIVOTS_BETWEEN_FRESH_STARTS = 100

/**
 * Bounded-variable primal simplex on a full tableau. Returns a solver that may be called with one objective after
 * another and goes on from the last basis. Prices by largest reduced cost, by Bland's rule after a stall; the
 * tableau is rebuilt from A now and then, and whenever an answer fails its own certificate.
 * Cost per pivot: rows × (rows + columns). Throws a RangeError when a lower bound is above its upper bound.
 * Sources: G. B. Dantzig, "Linear Programming and Extensions", 1963; R. G. Bland, "New finite pivoting rules", 1977.
 */
export function simplex(lp: LinearProgram): (objective: Float64Array) => LinearAnswer {
  const { rowCount: m, columnCount: n, matrix, rhs } = lp
  const width = n + m
  const lower = new Float64Array(width)
  const upper = new Float64Array(width)
  const x = new Float64Array(width)
  const sign = new Float64Array(m).fill(1)
  const basis = new Int32Array(m)
  const place = new Int32Array(width).fill(-1)
  const table = new Float64Array(m * width)
  const cost = new Float64Array(width)
  const reduced = new Float64Array(width)
  let age = 0

  for (let j = 0; j < n; j++) {
    lower[j] = lp.lower[j]!
    upper[j] = lp.upper[j]!
    if (!(lower[j]! <= upper[j]!)) throw new RangeError(`column ${j} has no value within its bounds`)
    x[j] = Math.min(Math.max(0, lower[j]!), upper[j]!)
  }
  let scale = 1
  for (let i = 0; i < m; i++) {
    let missing = rhs[i]!
    for (let j = 0; j < n; j++) missing -= matrix[i * n + j]! * x[j]!
    if (missing < 0) sign[i] = -1
    x[n + i] = Math.abs(missing)
    upper[n + i] = Math.abs(missing) > 0 ? Number.POSITIVE_INFINITY : 0
    scale = Math.max(scale, Math.abs(rhs[i]!), x[n + i]!)
    basis[i] = n + i
    place[n + i] = i
  }
  rebuild()
  let feasible: boolean | undefined

  return (objective) => {
    if (feasible === undefined) {
      cost.fill(0)
      cost.fill(-1, n)
      if (climb() === 'no-convergence') return { status: 'no-convergence' }
      let missing = 0
      for (let i = 0; i < m; i++) missing += x[n + i]!
      feasible = missing <= TOLERANCE * scale * 10
      if (feasible)
        for (let i = 0; i < m; i++) {
          upper[n + i] = 0
          x[n + i] = 0
        }
    }
    if (!feasible) return { status: 'infeasible', dual: duals().map((y) => -y) }
    cost.fill(0)
    cost.set(objective)
    const end = climb()
    if (end === 'no-convergence') return { status: end }
    if (typeof end === 'object') return { status: 'unbounded', x: x.slice(0, n), ray: end }
    let value = 0
    for (let j = 0; j < n; j++) value += objective[j]! * x[j]!
    const dual = duals()
    return { status: 'optimal', value, x: x.slice(0, n), dual, reduced: price(dual) }
  }

  /** Pivots until the certificate holds. Returns the ray when there is no end. */
  function climb(): 'optimal' | 'no-convergence' | Float64Array {
    let largest = 0
    for (const c of cost) largest = Math.max(largest, Math.abs(c))
    const worthwhile = TOLERANCE * Math.max(largest, Number.MIN_VALUE)
    let stalled = 0
    let rebuilt = false
    reprice()
    for (let step = 0; step < 1000 + 60 * width; step++) {
      const j = enter(worthwhile, stalled > PATIENCE)
      if (j === -1) {
        if (age === 0 || rebuilt || certified(worthwhile)) return 'optimal'
        rebuild()
        rebuilt = true
        continue
      }
      const up = reduced[j]! > 0 ? 1 : -1
      const own = up > 0 ? upper[j]! - x[j]! : x[j]! - lower[j]!
      const { row, length } = leave(j, up, own, stalled > PATIENCE)
      if (length === Number.POSITIVE_INFINITY) {
        if (age === 0) return rayOf(j, up)
        rebuild()
        continue
      }
      stalled = length > TOLERANCE * 1e-3 ? 0 : stalled + 1
      for (let i = 0; i < m; i++) x[basis[i]!]! -= up * length * table[i * width + j]!
      if (row === -1) {
        x[j] = up > 0 ? upper[j]! : lower[j]!
        continue
      }
      x[j]! += up * length
      const out = basis[row]!
      x[out] = up * table[row * width + j]! > 0 ? lower[out]! : upper[out]!
      pivot(row, j)
      rebuilt = false
      if (++age >= PIVOTS_BETWEEN_FRESH_STARTS) rebuild()
    }
    return 'no-convergence'
  }

  /** Column whose change pays: the one that pays most, or the first. −1: none. */
  function enter(worthwhile: number, first: boolean): number {
    let best = -1
    let most = worthwhile
    for (let j = 0; j < width; j++) {
      if (place[j] !== -1 || lower[j] === upper[j]) continue
      const d = reduced[j]!
      if (!(d > most ? x[j]! < upper[j]! : -d > most && x[j]! > lower[j]!)) continue
      best = j
      if (first) return j
      most = Math.abs(d)
    }
    return best
  }

  /** Row that stops the change of column j first (−1: the column's own bound), and how far it goes. */
  function leave(j: number, up: number, own: number, first: boolean): { row: number; length: number } {
    let length = own
    const reach = (i: number): number => {
      const slope = up * table[i * width + j]!
      if (Math.abs(slope) <= SMALLEST_PIVOT) return Number.POSITIVE_INFINITY
      const k = basis[i]!
      return Math.max(0, (slope > 0 ? x[k]! - lower[k]! : upper[k]! - x[k]!) / Math.abs(slope))
    }
    for (let i = 0; i < m; i++) length = Math.min(length, reach(i))
    if (length === own) return { row: -1, length }
    let row = -1
    for (let i = 0; i < m; i++) {
      if (!(reach(i) <= length + TOLERANCE * 1e-2)) continue
      if (
        row === -1 ||
        (first
          ? basis[i]! < basis[row]!
          : Math.abs(table[i * width + j]!) > Math.abs(table[row * width + j]!))
      )
        row = i
    }
    return { row, length }
  }

  function pivot(row: number, j: number): void {
    const at = row * width
    const p = table[at + j]!
    for (let k = 0; k < width; k++) table[at + k]! /= p
    for (let i = 0; i < m; i++) {
      const f = table[i * width + j]!
      if (i === row || f === 0) continue
      for (let k = 0; k < width; k++) table[i * width + k]! -= f * table[at + k]!
      table[i * width + j] = 0
    }
    const f = reduced[j]!
    for (let k = 0; k < width; k++) reduced[k]! -= f * table[at + k]!
    reduced[j] = 0
    place[basis[row]!] = -1
    basis[row] = j
    place[j] = row
  }

  /** The tableau afresh from A and the basis, with row exchange; then the basic values and the prices. */
  function rebuild(): void {
    for (let i = 0; i < m; i++) {
      table.fill(0, i * width, (i + 1) * width)
      table.set(matrix.subarray(i * n, (i + 1) * n), i * width)
      table[i * width + n + i] = sign[i]!
    }
    const columns = Array.from(basis)
    const taken = new Uint8Array(m)
    for (const j of columns) {
      let row = -1
      for (let i = 0; i < m; i++)
        if (!taken[i] && (row === -1 || Math.abs(table[i * width + j]!) > Math.abs(table[row * width + j]!)))
          row = i
      taken[row] = 1
      basis[row] = j
      place[j] = row
      const at = row * width
      const p = table[at + j]!
      for (let k = 0; k < width; k++) table[at + k]! /= p
      for (let i = 0; i < m; i++) {
        const f = table[i * width + j]!
        if (i === row || f === 0) continue
        for (let k = 0; k < width; k++) table[i * width + k]! -= f * table[at + k]!
      }
    }
    for (let i = 0; i < m; i++) {
      let value = 0
      for (let r = 0; r < m; r++) value += table[i * width + n + r]! * sign[r]! * rhs[r]!
      for (let j = 0; j < width; j++) if (place[j] === -1) value -= table[i * width + j]! * x[j]!
      x[basis[i]!] = value
    }
    age = 0
    reprice()
  }

  function reprice(): void {
    reduced.set(cost)
    for (let i = 0; i < m; i++) {
      const c = cost[basis[i]!]!
      if (c !== 0) for (let k = 0; k < width; k++) reduced[k]! -= c * table[i * width + k]!
    }
  }

  /** dual = c_B·B⁻¹; the columns of the artificials hold B⁻¹ up to their signs. */
  function duals(): Float64Array {
    const y = new Float64Array(m)
    for (let i = 0; i < m; i++) {
      const c = cost[basis[i]!]!
      if (c !== 0) for (let r = 0; r < m; r++) y[r]! += c * table[i * width + n + r]! * sign[r]!
    }
    return y
  }

  function price(dual: Float64Array): Float64Array {
    const d = cost.slice(0, n)
    for (let i = 0; i < m; i++)
      if (dual[i] !== 0) for (let j = 0; j < n; j++) d[j]! -= dual[i]! * matrix[i * n + j]!
    return d
  }

  /** Do the values satisfy A·x = b and their bounds, and the prices their signs, by the numbers as given? */
  function certified(worthwhile: number): boolean {
    let size = scale
    for (let j = 0; j < n; j++) size = Math.max(size, Math.abs(x[j]!))
    for (let j = 0; j < width; j++)
      if (!(x[j]! >= lower[j]! - TOLERANCE * size && x[j]! <= upper[j]! + TOLERANCE * size)) return false
    for (let i = 0; i < m; i++) {
      let left = rhs[i]! - sign[i]! * x[n + i]!
      for (let j = 0; j < n; j++) left -= matrix[i * n + j]! * x[j]!
      if (!(Math.abs(left) <= TOLERANCE * size)) return false
    }
    const d = price(duals())
    for (let j = 0; j < n; j++) {
      if (d[j]! > 2 * worthwhile && x[j]! < upper[j]! - TOLERANCE * size) return false
      if (d[j]! < -2 * worthwhile && x[j]! > lower[j]! + TOLERANCE * size) return false
    }
    return true
  }

  function rayOf(j: number, up: number): Float64Array {
    const ray = new Float64Array(n)
    if (j < n) ray[j] = up
    for (let i = 0; i < m; i++) if (basis[i]! < n) ray[basis[i]!] = -up * table[i * width + j]!
    return ray
  }
}
