import type { Graph } from './graph'

/** Edges of a walk with the fewest edges from one vertex to another; empty where there is none. O(n + m). */
export function fewestEdges(g: Graph, from: number, to: number): number[] {
  const entry = new Map<number, number>([[from, -1]])
  search: for (const v of entry.keys()) {
    for (let i = g.start[v]!; i < g.start[v + 1]!; i++) {
      const w = g.far[i]!
      if (entry.has(w)) continue
      entry.set(w, g.edge[i]!)
      if (w === to) break search
    }
  }
  const edges: number[] = []
  if (!entry.has(to)) return edges
  for (let v = to; v !== from; ) {
    const e = entry.get(v)!
    edges.push(e)
    v = g.tail[e] === v ? g.head[e]! : g.tail[e]!
  }
  return edges.reverse()
}
