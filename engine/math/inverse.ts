import type { Factor } from './sparse'

/**
 * Diagonal of A⁻¹ by vertex: the resistance seen from each vertex to the held ones, all of them from one
 * factor. 0 at held vertices. O(Σ column²), no subtraction for positive conductances.
 * Source of the method: Takahashi, Fagan and Chin, "Formation of a sparse bus impedance matrix", 1973.
 */
export function inverseDiagonal({ pattern, pivot, lower }: Factor): Float64Array {
  const { n, order, held, start, row } = pattern
  /** Entries of the inverse on the factor's own pattern, parallel to `row`, and its diagonal, by position. */
  const entry = new Float64Array(row.length)
  const diagonal = new Float64Array(n)
  const slot = new Int32Array(n).fill(-1)
  for (let k = n - 1; k >= 0; k--) {
    const from = start[k]!
    const to = start[k + 1]!
    for (let i = from; i < to; i++) slot[row[i]!] = i
    for (let i = from; i < to; i++) {
      const r = row[i]!
      entry[i]! += lower[i]! * diagonal[r]!
      for (let j = start[r]!; j < start[r + 1]!; j++) {
        const other = slot[row[j]!]!
        if (other === -1) continue
        entry[other]! += lower[i]! * entry[j]!
        entry[i]! += lower[other]! * entry[j]!
      }
    }
    let sum = 1 / pivot[k]!
    for (let i = from; i < to; i++) {
      sum += lower[i]! * entry[i]!
      slot[row[i]!] = -1
    }
    diagonal[k] = sum
  }
  const out = new Float64Array(n)
  for (let k = 0; k < n; k++) out[order[k]!] = held[order[k]!] ? 0 : diagonal[k]!
  return out
}
