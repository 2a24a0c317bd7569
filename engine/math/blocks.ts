import type { Graph } from './graph'
import { remembering } from './remember'

/** `of[e]` of an edge that lies on no cycle, and of an edge from a vertex to itself. */
export const BRIDGE = -1
export const SELF_LOOP = -2

/**
 * Biconnected blocks of a multigraph, hung up as a forest. A block here is meshed: two edges or more, so two
 * parallel edges are a block and no bridges. Every vertex but the root of its component lies below exactly one
 * block or bridge; the vertex of that block (or bridge) nearest the root is its `top`.
 * Shapes: of: m; order, rank, top, above, bridge: n; start: count + 1; edge: edges of all blocks.
 */
export interface Blocks {
  readonly count: number
  /** Block of each edge, BRIDGE or SELF_LOOP. */
  readonly of: Int32Array
  /** Edges of block b: edge[start[b]] up to edge[start[b + 1]]. */
  readonly start: Int32Array
  readonly edge: Int32Array
  /** Vertices so that every top stands before what hangs on it, and the place of each vertex there. */
  readonly order: Int32Array
  readonly rank: Int32Array
  /** −1 at roots. */
  readonly top: Int32Array
  /** Block that the vertex hangs below, −1 where it is a bridge or nothing. */
  readonly above: Int32Array
  /** Bridge that the vertex hangs below, −1 where it is a block or nothing. */
  readonly bridge: Int32Array
}

/**
 * One depth-first walk with low points; no recursion, so a chain of any length is fine. O(n + m).
 * Roots are the lowest vertices of their components. Source: J. Hopcroft and R. Tarjan, "Algorithm 447: efficient
 * algorithms for graph manipulation", 1973.
 */
export const blocksOf: (g: Graph) => Blocks = remembering(searched)

function searched(g: Graph): Blocks {
  const n = g.vertexCount
  const m = g.edgeCount
  const of = new Int32Array(m).fill(BRIDGE)
  const edge = new Int32Array(m)
  const starts = [0]
  const order = new Int32Array(n)
  const rank = new Int32Array(n).fill(-1)
  const top = new Int32Array(n).fill(-1)
  const above = new Int32Array(n).fill(-1)
  const bridge = new Int32Array(n).fill(-1)

  const low = new Int32Array(n)
  const cursor = g.start.slice(0, n)
  const path = new Int32Array(n)
  /** Tree edge to each vertex; edges met and not yet in a finished block. */
  const entry = new Int32Array(n).fill(-1)
  const open = new Int32Array(m)
  let openCount = 0
  let filled = 0
  let met = 0

  for (let e = 0; e < m; e++) if (g.tail[e] === g.head[e]) of[e] = SELF_LOOP
  for (let root = 0; root < n; root++) {
    if (rank[root] !== -1) continue
    let depth = 0
    path[0] = root
    meet(root)
    while (depth >= 0) {
      const v = path[depth]!
      const i = cursor[v]!
      if (i < g.start[v + 1]!) {
        cursor[v] = i + 1
        const e = g.edge[i]!
        const w = g.far[i]!
        if (w === v || e === entry[v]) continue
        if (rank[w] === -1) {
          entry[w] = e
          open[openCount++] = e
          path[++depth] = w
          meet(w)
        } else if (rank[w]! < rank[v]!) {
          open[openCount++] = e
          low[v] = Math.min(low[v]!, rank[w]!)
        }
        continue
      }
      if (--depth < 0) continue
      const u = path[depth]!
      if (low[v]! < rank[u]!) low[u] = Math.min(low[u]!, low[v]!)
      else close(u, v)
    }
  }
  return {
    count: starts.length - 1,
    of,
    start: Int32Array.from(starts),
    edge: edge.slice(0, filled),
    order,
    rank,
    top,
    above,
    bridge,
  }

  function meet(v: number): void {
    order[met] = v
    rank[v] = met
    low[v] = met++
  }

  /** What has been opened since the tree edge from u to v hangs on u alone: one bridge, or one block. */
  function close(u: number, v: number): void {
    const first = entry[v]!
    if (open[openCount - 1] === first) {
      openCount--
      top[v] = u
      bridge[v] = first
      return
    }
    const block = starts.length - 1
    let e: number
    do {
      e = open[--openCount]!
      of[e] = block
      edge[filled++] = e
      hang(g.tail[e]!)
      hang(g.head[e]!)
    } while (e !== first)
    starts.push(filled)

    function hang(w: number): void {
      if (w === u) return
      top[w] = u
      above[w] = block
    }
  }
}
