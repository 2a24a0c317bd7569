import type { CutEdge } from './blockflow'
import type { Gates, Supplied } from './gates'

/** A minimum cut: edges that limit, and vertices whose whole supply is drawn. */
export interface GateCut {
  readonly edges: CutEdge[]
  readonly vertices: number[]
}

/** Follows the flow back through the gates to what limits it, as near to where it arrives as possible. */
export interface GateCuts {
  /** Adds what limits all that comes to the vertices of some joints other than through their own blocks. */
  behind(joints: readonly number[], cut: GateCut): GateCut
  /** Adds what limits the vertex's own supply and all that comes through the blocks that pass `through`. */
  around(vertex: number, through: (block: number) => boolean, cut: GateCut): GateCut
}

/** Cost of a cut: the part of the network between it and where the flow arrives. Only where that is limited. */
export function gateCuts(net: Supplied, gates: Gates): GateCuts {
  const { tree, gate, inflow } = gates
  const { jointStart, jointVertex, jointBlock, vertexStart, atVertex } = tree

  /** Joints that have to be looked behind are left in `pending`. */
  const lookAround = (
    vertex: number,
    through: (block: number) => boolean,
    cut: GateCut,
    pending: number[],
  ): void => {
    if (net.supply[vertex]! > 0) cut.vertices.push(vertex)
    for (let i = vertexStart[vertex]!; i < vertexStart[vertex + 1]!; i++) {
      const j = atVertex[i]!
      const b = jointBlock[j]!
      if (!(gate[j]! > 0) || !through(b)) continue
      if (tree.edges[b]!.length > 1) lookInto(b, j, cut, pending)
      else if (gates.single(b, j) > inflow[gates.otherJoint(b, j)]!) pending.push(gates.otherJoint(b, j))
      else {
        const edge = tree.edges[b]![0]!
        cut.edges.push({ edge, towards: net.graph.head[edge] === vertex ? 'head' : 'tail' })
      }
    }
  }

  const lookInto = (b: number, joint: number, cut: GateCut, pending: number[]): void => {
    const others = gates.inflows(b)
    others[joint - jointStart[b]!] = 0
    const found = gates.block(b).cut(joint - jointStart[b]!, others)
    cut.edges.push(...found.edges)
    for (const place of found.places) pending.push(jointStart[b]! + place)
  }

  const behind = (joints: readonly number[], cut: GateCut): GateCut => {
    const pending = [...joints]
    for (let j = pending.pop(); j !== undefined; j = pending.pop()) {
      const home = jointBlock[j]!
      lookAround(jointVertex[j]!, (b) => b !== home, cut, pending)
    }
    return cut
  }

  return {
    behind,
    around(vertex, through, cut) {
      const pending: number[] = []
      lookAround(vertex, through, cut, pending)
      return behind(pending, cut)
    },
  }
}
