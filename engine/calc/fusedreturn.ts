import { maxFlow } from '../math/maxflow'
import type { BridgeReturns } from './bridgeflow'
import { limitsOf, loopGraph } from './loop'
import { type ByNet, together, withMissing } from './netgraph'
import type { Prepared } from './prepare'

/** A net with fuses of its own: one flow over all that hangs together, for each bridge and sense. */
export function fusedReturns(p: Prepared, content: ByNet, net: number): BridgeReturns {
  const { nets, devices } = together(p, content, net, () => false)
  const loop = loopGraph(p, content, nets, devices)
  return {
    flow(bridge, sense, missing) {
      const { graph } = loop
      const edge = loop.branch.indexOf(bridge)
      const [source, sink] = sense === 'forward' ? [graph.head, graph.tail] : [graph.tail, graph.head]
      const forward = withMissing(loop.forward, missing)
      const backward = withMissing(loop.backward, missing)
      const { value, sinkSide } = maxFlow(graph, forward, backward, source[edge]!, sink[edge]!, edge)
      const edges = Array.from(loop.branch.keys()).flatMap((k) => {
        const towards = sinkSide[graph.tail[k]!] === 1 ? 'tail' : 'head'
        const crosses = k !== edge && sinkSide[graph.tail[k]!] !== sinkSide[graph.head[k]!]
        return crosses ? [{ edge: k, towards } as const] : []
      })
      return { amps: value, limiting: () => limitsOf(p, loop, edges) }
    },
  }
}
