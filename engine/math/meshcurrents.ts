import type { Blocks } from './blocks'
import { sharesIn } from './division'
import type { Graph } from './graph'

/**
 * How a current that is put in at a vertex and taken out at the root of its component divides among the edges. It
 * passes the blocks and bridges on the way to the root, and in each block only where it comes in matters.
 */
export interface MeshCurrents {
  /** Bridges on the way, with the sign in which they are passed (+1 tail → head). */
  bridges(vertex: number, visit: (edge: number, sign: number) => void): void
  /** Blocks on the way, each with the vertex of the block at which the current comes in. */
  joints(vertex: number, visit: (block: number, joint: number) => void): void
  /**
   * Share of 1 A, put in at a vertex of the block of `edge` and taken out at its top, that takes the edge; by
   * vertex, without those that move nothing. undefined where the conductances go beyond what a number holds.
   */
  shares(edge: number): ReadonlyMap<number, number> | undefined
}

/** Shares are of the order of 1; below this they are rounding. */
const ROUNDING = 1e-10

/** Cost of `shares`: one factorisation of the block and one solution. */
export function meshCurrents(g: Graph, blocks: Blocks, resistance: Float64Array): MeshCurrents {
  return {
    bridges(vertex, visit) {
      for (let v = vertex; blocks.top[v] !== -1; v = blocks.top[v]!) {
        const e = blocks.bridge[v]!
        if (e !== -1) visit(e, g.tail[e] === v ? 1 : -1)
      }
    },
    joints(vertex, visit) {
      for (let v = vertex; blocks.top[v] !== -1; v = blocks.top[v]!)
        if (blocks.above[v] !== -1) visit(blocks.above[v]!, v)
    },
    shares(edge) {
      const block = blocks.of[edge]!
      const edges = blocks.edge.subarray(blocks.start[block]!, blocks.start[block + 1]!)
      const { vertices, share } = sharesIn(edges, g.tail, g.head, resistance, edge)
      if (!share.every(Number.isFinite)) return undefined
      const top = vertices.findIndex((v) => blocks.above[v] !== block)
      const found = new Map<number, number>()
      vertices.forEach((v, k) => {
        const value = share[k]! - share[top]!
        if (Math.abs(value) > ROUNDING) found.set(v, value)
      })
      return found
    },
  }
}
