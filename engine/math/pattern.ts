/** Distinct edges between vertices that are not held, by the end that is eliminated first; rows ascending. */
export function edgeColumns(
  n: number,
  tail: Int32Array,
  head: Int32Array,
  held: Uint8Array,
  place: Int32Array,
): { edgeStart: Int32Array; edgeRow: Int32Array; edgeSlot: Int32Array } {
  const edgeSlot = new Int32Array(tail.length).fill(-1)
  const columns: number[][] = Array.from({ length: n }, () => [])
  for (let e = 0; e < tail.length; e++) {
    const u = tail[e]!
    const v = head[e]!
    if (u === v || held[u] || held[v]) continue
    columns[Math.min(place[u]!, place[v]!)]!.push(e)
  }
  const edgeStart = new Int32Array(n + 1)
  const rows: number[] = []
  const later = (e: number): number => Math.max(place[tail[e]!]!, place[head[e]!]!)
  for (let k = 0; k < n; k++) {
    const column = columns[k]!.sort((a, b) => later(a) - later(b))
    for (const e of column) {
      const r = later(e)
      if (rows.length === edgeStart[k]! || rows[rows.length - 1] !== r) rows.push(r)
      edgeSlot[e] = rows.length - 1
    }
    edgeStart[k + 1] = rows.length
  }
  return { edgeStart, edgeRow: Int32Array.from(rows), edgeSlot }
}

/**
 * Fill of the factor, row by row: row k stands in every column on the elimination-tree paths from its entries
 * to k. Source: T. A. Davis, "Algorithm 849: a concise sparse Cholesky factorization package", 2005.
 */
export function fill(
  n: number,
  edgeStart: Int32Array,
  edgeRow: Int32Array,
): { start: Int32Array; row: Int32Array } {
  const rowStart = new Int32Array(n + 1)
  for (const r of edgeRow) rowStart[r + 1]!++
  for (let k = 0; k < n; k++) rowStart[k + 1]! += rowStart[k]!
  const next = rowStart.slice(0, n)
  const column = new Int32Array(edgeRow.length)
  for (let k = 0; k < n; k++)
    for (let i = edgeStart[k]!; i < edgeStart[k + 1]!; i++) column[next[edgeRow[i]!]!++] = k

  const parent = new Int32Array(n).fill(-1)
  const flag = new Int32Array(n)
  const walk = (visit: (column: number, row: number) => void): void => {
    for (let k = 0; k < n; k++) {
      flag[k] = k
      for (let i = rowStart[k]!; i < rowStart[k + 1]!; i++) {
        for (let j = column[i]!; flag[j] !== k; j = parent[j]!) {
          if (parent[j] === -1) parent[j] = k
          visit(j, k)
          flag[j] = k
        }
      }
    }
  }
  const start = new Int32Array(n + 1)
  walk((j) => {
    start[j + 1]!++
  })
  for (let k = 0; k < n; k++) start[k + 1]! += start[k]!
  const free = start.slice(0, n)
  const row = new Int32Array(start[n]!)
  flag.fill(-1)
  walk((j, k) => {
    row[free[j]!++] = k
  })
  return { start, row }
}
