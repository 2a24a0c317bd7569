/**
 * An undirected multigraph on vertices 0..n-1 in compressed rows. Parallel edges and self-loops are kept;
 * a self-loop stands twice in its vertex's row. Shapes: tail, head: m; start: n + 1; edge, far: 2m.
 */
export interface Graph {
  readonly vertexCount: number
  readonly edgeCount: number
  readonly tail: Int32Array
  readonly head: Int32Array
  readonly start: Int32Array
  /** Edge index of each row entry. */
  readonly edge: Int32Array
  /** Vertex at the other end of each row entry. */
  readonly far: Int32Array
}

/** Builds the rows by counting. O(n + m). */
export function graphOf(vertexCount: number, tail: Int32Array, head: Int32Array): Graph {
  const m = tail.length
  const start = new Int32Array(vertexCount + 1)
  for (let e = 0; e < m; e++) {
    start[tail[e]! + 1]!++
    start[head[e]! + 1]!++
  }
  for (let v = 0; v < vertexCount; v++) start[v + 1]! += start[v]!
  const next = start.slice(0, vertexCount)
  const edge = new Int32Array(2 * m)
  const far = new Int32Array(2 * m)
  for (let e = 0; e < m; e++) {
    const u = tail[e]!
    const v = head[e]!
    const i = next[u]!++
    edge[i] = e
    far[i] = v
    const j = next[v]!++
    edge[j] = e
    far[j] = u
  }
  return { vertexCount, edgeCount: m, tail, head, start, edge, far }
}
