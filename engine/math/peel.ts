import type { Graph } from './graph'

/**
 * Strips leaves, and what then becomes a leaf, until none is left that is not marked as kept.
 * `outer[e]` is the end of edge e that was stripped with it, −1 where the edge stays. O(n + m), no recursion.
 */
export function peel(g: Graph, kept: Uint8Array): { outer: Int32Array } {
  const outer = new Int32Array(g.edgeCount).fill(-1)
  const degree = new Int32Array(g.vertexCount)
  const waiting: number[] = []
  for (let v = 0; v < g.vertexCount; v++) {
    degree[v] = g.start[v + 1]! - g.start[v]!
    if (degree[v] === 1 && !kept[v]) waiting.push(v)
  }
  for (let v = waiting.pop(); v !== undefined; v = waiting.pop()) {
    if (degree[v] !== 1) continue
    for (let i = g.start[v]!; i < g.start[v + 1]!; i++) {
      const e = g.edge[i]!
      if (outer[e] !== -1) continue
      const w = g.far[i]!
      outer[e] = v
      degree[v]!--
      degree[w]!--
      if (degree[w] === 1 && !kept[w]) waiting.push(w)
      break
    }
  }
  return { outer }
}
