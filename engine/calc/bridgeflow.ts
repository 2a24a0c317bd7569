import type { Amps } from '../units'
import type { CutMember } from './protection'

/** Greatest lasting current through a bridge, A, one way; Infinity when unlimited; what limits it when asked. */
export interface BridgeFlow {
  readonly amps: Amps
  limiting(): CutMember[]
}

/** Sense of a bridge current: along the branch's own direction or against it. */
export type Sense = 'forward' | 'backward'

/**
 * Greatest current through a bridge of one net in any state that blows no fuse: the flow round the loop, out of one
 * end and into the other, through devices of both sides. A device carries up to its fault current from negative
 * to positive and anything backwards (it may be shorted). Parallel fuses count with the sum of their ratings,
 * however resistance would share them; elsewhere this is what the linear program at given resistances gives.
 */
export interface BridgeReturns {
  /** `missing`: the rating that stands for one that is not given, 0 or Infinity. */
  flow(bridge: number, sense: Sense, missing: number): BridgeFlow
}
