import type { Blocks } from '../math/blocks'
import type { BridgeReturns } from './bridgeflow'
import { fusedReturns } from './fusedreturn'
import type { ByNet } from './netgraph'
import type { Prepared } from './prepare'
import { unfusedReturns } from './unfusedreturn'

/** The method that serves the net: a short one where it has no fuses of its own, the plain one where it has. */
export function bridgeReturns(p: Prepared, blocks: Blocks, content: ByNet, net: number): BridgeReturns {
  return content.branches[net]!.some((e) => p.isFuse[e] === 1)
    ? fusedReturns(p, content, net)
    : unfusedReturns(p, blocks, content, net)
}
