import { BRIDGE, blocksOf, SELF_LOOP } from './blocks'
import type { Graph } from './graph'

/**
 * The blocks of a graph, bridges among them, and where they meet. A joint is one block's hold on one of its vertices; a block with
 * one edge has two. Rooted: blocks stand in `order` so that whatever a block hangs from comes before it.
 */
export interface BlockTree {
  /** Block of each edge; −1 for a self-loop. */
  readonly of: Int32Array
  readonly edges: readonly (readonly number[])[]
  /** Joints of block b: from jointStart[b] up to jointStart[b + 1]. */
  readonly jointStart: Int32Array
  readonly jointVertex: Int32Array
  readonly jointBlock: Int32Array
  /** Joints at vertex v: atVertex[vertexStart[v]..vertexStart[v + 1]). */
  readonly vertexStart: Int32Array
  readonly atVertex: Int32Array
  readonly order: Int32Array
  /** The joint by which each block hangs from what comes before it. */
  readonly top: Int32Array
}

/** O(n + m), no recursion. */
export function blockTree(g: Graph): BlockTree {
  const { of: meshed, count: meshes } = blocksOf(g)
  let count = meshes
  const of = meshed.map((b) => (b === BRIDGE ? count++ : b === SELF_LOOP ? -1 : b))
  const edges: number[][] = Array.from({ length: count }, () => [])
  for (let e = 0; e < g.edgeCount; e++) if (of[e] !== -1) edges[of[e]!]!.push(e)

  const jointStart = new Int32Array(count + 1)
  const vertices: number[] = []
  const seen = new Int32Array(g.vertexCount).fill(-1)
  edges.forEach((list, b) => {
    for (const e of list)
      for (const v of [g.tail[e]!, g.head[e]!]) {
        if (seen[v] === b) continue
        seen[v] = b
        vertices.push(v)
      }
    jointStart[b + 1] = vertices.length
  })
  const jointVertex = Int32Array.from(vertices)
  const jointBlock = new Int32Array(vertices.length)
  for (let b = 0; b < count; b++) jointBlock.fill(b, jointStart[b]!, jointStart[b + 1]!)

  const vertexStart = new Int32Array(g.vertexCount + 1)
  for (const v of jointVertex) vertexStart[v + 1]!++
  for (let v = 0; v < g.vertexCount; v++) vertexStart[v + 1]! += vertexStart[v]!
  const free = vertexStart.slice(0, g.vertexCount)
  const atVertex = new Int32Array(jointVertex.length)
  jointVertex.forEach((v, j) => {
    atVertex[free[v]!++] = j
  })

  const order = new Int32Array(count)
  const top = new Int32Array(count).fill(-1)
  let placed = 0
  const hangFrom = (v: number): void => {
    for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++) {
      const joint = atVertex[i]!
      const b = jointBlock[joint]!
      if (top[b] !== -1) continue
      top[b] = joint
      order[placed++] = b
    }
  }
  let next = 0
  for (let root = 0; root < g.vertexCount; root++) {
    const before = placed
    hangFrom(root)
    if (placed === before) continue
    for (; next < placed; next++) {
      const b = order[next]!
      for (let j = jointStart[b]!; j < jointStart[b + 1]!; j++) if (j !== top[b]) hangFrom(jointVertex[j]!)
    }
  }
  return { of, edges, jointStart, jointVertex, jointBlock, vertexStart, atVertex, order, top }
}
