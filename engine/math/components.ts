import type { Graph } from './graph'

/** Connected components: `of[v]` is the component of vertex v, numbered by lowest vertex. O(n + m), no recursion. */
export function components(g: Graph): { of: Int32Array; count: number } {
  const of = new Int32Array(g.vertexCount).fill(-1)
  const stack = new Int32Array(g.vertexCount)
  let count = 0
  for (let root = 0; root < g.vertexCount; root++) {
    if (of[root] !== -1) continue
    let top = 0
    stack[top++] = root
    of[root] = count
    while (top > 0) {
      const v = stack[--top]!
      for (let i = g.start[v]!; i < g.start[v + 1]!; i++) {
        const w = g.far[i]!
        if (of[w] !== -1) continue
        of[w] = count
        stack[top++] = w
      }
    }
    count++
  }
  return { of, count }
}
