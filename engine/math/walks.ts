import type { Graph } from './graph'

/** Walks with the fewest edges from one vertex to all others of its component. */
export interface Walks {
  readonly root: number
  /** Last edge of the walk to each vertex; −1 at the root and where there is none. */
  readonly entry: Int32Array
}

/** Breadth-first search. O(n + m). */
export function walksFrom(g: Graph, root: number): Walks {
  const entry = new Int32Array(g.vertexCount).fill(-1)
  const queue = [root]
  for (const v of queue) {
    for (let i = g.start[v]!; i < g.start[v + 1]!; i++) {
      const w = g.far[i]!
      if (w === root || entry[w] !== -1) continue
      entry[w] = g.edge[i]!
      queue.push(w)
    }
  }
  return { root, entry }
}

/** Edges of the walk from a vertex back to the root, nearest the vertex first. */
export function walkBack(g: Graph, walks: Walks, from: number): number[] {
  const edges: number[] = []
  for (let v = from; v !== walks.root && walks.entry[v] !== -1; ) {
    const e = walks.entry[v]!
    edges.push(e)
    v = g.tail[e] === v ? g.head[e]! : g.tail[e]!
  }
  return edges
}
