import { eliminationOrder } from './order'
import { edgeColumns, fill } from './pattern'

/**
 * Sparse solution of A·x = b for A = Σ gₑ(eᵤ − eᵥ)(eᵤ − eᵥ)ᵀ + diag(d): the conductance matrix of a network.
 * Analyse the pattern once, factorise for each set of values, solve for each right-hand side.
 * Positions below are places in the elimination order; `place` takes a vertex to its position.
 */
export interface Pattern {
  readonly n: number
  readonly tail: Int32Array
  readonly head: Int32Array
  /** 1 where the vertex is held at 0: its row and column are left out, its solution is 0. */
  readonly held: Uint8Array
  readonly order: Int32Array
  readonly place: Int32Array
  /** Columns of the strictly lower factor, rows ascending: start n + 1, row fill. */
  readonly start: Int32Array
  readonly row: Int32Array
  /** Distinct edges by their earlier end: start n + 1, row = later end; slot of each edge in them, or −1. */
  readonly edgeStart: Int32Array
  readonly edgeRow: Int32Array
  readonly edgeSlot: Int32Array
}

export interface Factor {
  readonly pattern: Pattern
  /** Pivots by position. */
  readonly pivot: Float64Array
  /** Negated entries of the unit lower factor, parallel to `pattern.row`. */
  readonly lower: Float64Array
  /** Vertex whose pivot came out 0 or not finite (a part with no held vertex, a collapsed state); −1 when sound. */
  readonly singularAt: number
}

/**
 * Order and fill of the factor. Self-loops and doubles are allowed. O(fill) after ordering; loops only, so a
 * chain of any length is fine. Hold at least one vertex of every component, or give it a diagonal.
 */
export function analyse(n: number, tail: Int32Array, head: Int32Array, held: Uint8Array): Pattern {
  const order = eliminationOrder(n, tail, head, held)
  const place = new Int32Array(n)
  for (let k = 0; k < n; k++) place[order[k]!] = k
  const edges = edgeColumns(n, tail, head, held, place)
  const { start, row } = fill(n, edges.edgeStart, edges.edgeRow)
  return { n, tail, head, held, order, place, start, row, ...edges }
}

/**
 * A = L·D·Lᵀ by columns. Each pivot is summed from what remains in its column and its row sum, never by
 * subtraction, so with positive conductances every pivot keeps full relative accuracy, whatever the spread
 * (Grassmann, Taksar and Heyman's way of eliminating, 1985). Negative conductances and diagonals are allowed;
 * there is no pivoting. Shapes: conductance per edge, diagonal per vertex. O(Σ column²).
 */
export function factorise(pattern: Pattern, conductance: Float64Array, diagonal?: Float64Array): Factor {
  const { n, tail, head, held, place, start, row, edgeStart, edgeRow, edgeSlot } = pattern
  const joint = new Float64Array(edgeRow.length)
  /** Row sum of what is left of A, by position: conductance to held vertices, and the diagonal. */
  const excess = new Float64Array(n)
  if (diagonal) for (let v = 0; v < n; v++) if (!held[v]) excess[place[v]!] = diagonal[v]!
  for (let e = 0; e < tail.length; e++) {
    const slot = edgeSlot[e]!
    const u = tail[e]!
    const v = head[e]!
    if (slot >= 0) joint[slot]! += conductance[e]!
    else if (u !== v && !held[u]) excess[place[u]!]! += conductance[e]!
    else if (u !== v && !held[v]) excess[place[v]!]! += conductance[e]!
  }
  for (let v = 0; v < n; v++) if (held[v]) excess[place[v]!] = 1

  const pivot = new Float64Array(n)
  const lower = new Float64Array(row.length)
  const work = new Float64Array(n)
  /** Columns waiting for row k, as linked lists; `reached` is each column's entry for the row it waits for. */
  const firstWaiting = new Int32Array(n).fill(-1)
  const nextWaiting = new Int32Array(n).fill(-1)
  const reached = new Int32Array(n)
  let singularAt = -1
  for (let k = 0; k < n; k++) {
    for (let i = edgeStart[k]!; i < edgeStart[k + 1]!; i++) work[edgeRow[i]!] = joint[i]!
    let sum = excess[k]!
    for (let j = firstWaiting[k]!; j !== -1; ) {
      const after = nextWaiting[j]!
      const at = reached[j]!
      const l = lower[at]!
      sum += l * excess[j]!
      const scale = l * pivot[j]!
      const end = start[j + 1]!
      for (let i = at + 1; i < end; i++) work[row[i]!]! += scale * lower[i]!
      if (at + 1 < end) wait(j, at + 1)
      j = after
    }
    excess[k] = sum
    const from = start[k]!
    const to = start[k + 1]!
    for (let i = from; i < to; i++) sum += work[row[i]!]!
    pivot[k] = sum
    if (!(Math.abs(sum) > 0 && Math.abs(sum) < Number.POSITIVE_INFINITY) && singularAt === -1)
      singularAt = pattern.order[k]!
    for (let i = from; i < to; i++) {
      lower[i] = work[row[i]!]! / sum
      work[row[i]!] = 0
    }
    if (from < to) wait(k, from)
  }
  return { pattern, pivot, lower, singularAt }

  function wait(column: number, entry: number): void {
    const r = row[entry]!
    reached[column] = entry
    nextWaiting[column] = firstWaiting[r]!
    firstWaiting[r] = column
  }
}

/** x with A·x = b, by vertex; 0 at held vertices whatever b says there. O(fill). */
export function solve(factor: Factor, b: Float64Array, out = new Float64Array(b.length)): Float64Array {
  const { n, order, held, start, row } = factor.pattern
  const { lower, pivot } = factor
  const y = new Float64Array(n)
  for (let k = 0; k < n; k++) y[k] = held[order[k]!] ? 0 : b[order[k]!]!
  for (let k = 0; k < n; k++) {
    const yk = y[k]!
    if (yk === 0) continue
    for (let i = start[k]!; i < start[k + 1]!; i++) y[row[i]!]! += lower[i]! * yk
  }
  for (let k = n - 1; k >= 0; k--) {
    let x = y[k]! / pivot[k]!
    for (let i = start[k]!; i < start[k + 1]!; i++) x += lower[i]! * y[row[i]!]!
    y[k] = x
  }
  for (let k = 0; k < n; k++) out[order[k]!] = y[k]!
  return out
}
