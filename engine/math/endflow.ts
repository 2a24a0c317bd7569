import { type GateCut, gateCuts } from './gatecut'
import { gatesOf, type Supplied } from './gates'

/** What can come into the ends of an edge from the rest of the network, the edge taken out. Unlimited edges only. */
export interface EndFlows {
  /** Greatest flow into the tail or head of the edge; Infinity when unlimited. */
  into(edge: number, end: 'tail' | 'head'): number
  /** The minimum cut nearest the end. Only where the flow is limited. */
  cut(edge: number, end: 'tail' | 'head'): GateCut
}

/**
 * Flow from all supplies to every edge end, without solving a flow for each: read off the gates, but for an
 * unlimited edge that parts a cluster of a meshed block, which takes a flow for each end.
 * O(n + m), those flows and those of the gates.
 */
export function endFlows(net: Supplied): EndFlows {
  const { graph, supply } = net
  if (!supply.some((x) => x > 0)) return { into: () => 0, cut: () => ({ edges: [], vertices: [] }) }
  const gates = gatesOf(net)
  const cuts = gateCuts(net, gates)
  const { tree, gate, inflow, block, inflows, jointOf } = gates
  const { jointStart, vertexStart, atVertex } = tree

  return {
    into(edge, end) {
      const v = graph[end][edge]!
      const b = tree.of[edge]!
      if (b === -1) return everything(v)
      const joint = jointOf(b, v)
      if (tree.edges[b]!.length === 1) return inflow[joint]!
      if (!block(b).splits(edge)) return inflow[joint]! + gate[joint]!
      return block(b).into(joint - jointStart[b]!, inflows(b), edge)
    },
    cut(edge, end) {
      const v = graph[end][edge]!
      const b = tree.of[edge]!
      const cut: GateCut = { edges: [], vertices: [] }
      if (b === -1) return cuts.around(v, () => true, cut)
      const joint = jointOf(b, v)
      if (tree.edges[b]!.length === 1) return cuts.behind([joint], cut)
      const found = block(b).cut(joint - jointStart[b]!, inflows(b), edge)
      cut.edges.push(...found.edges)
      return cuts.behind(
        found.places.map((place) => jointStart[b]! + place),
        cut,
      )
    },
  }

  function everything(v: number): number {
    let sum = supply[v]!
    for (let i = vertexStart[v]!; i < vertexStart[v + 1]!; i++) sum += gate[atVertex[i]!]!
    return sum
  }
}
