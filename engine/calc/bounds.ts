import type { Prepared } from './prepare'

/** Least and greatest current by branch, A; what each system of devices adds is added up. */
export interface Bounds {
  readonly min: Float64Array
  readonly max: Float64Array
}

/**
 * Why the branches of a meshed block have no answer: its resistances go beyond what a number can hold (conductances that
 * are not finite); or, where nets form a ring, the search over device currents ended without a verdict.
 */
export type NoEnvelope = 'resistance-out-of-range' | 'no-convergence'

/** Adds to a bridge what may leave the part that hangs on it, given as least and greatest. */
export function addLeaving(
  p: Prepared,
  into: Bounds,
  bridge: number,
  hanging: number,
  least: number,
  greatest: number,
): void {
  if (p.graph.tail[bridge] === hanging) {
    into.min[bridge]! += least
    into.max[bridge]! += greatest
  } else {
    into.min[bridge]! -= greatest
    into.max[bridge]! -= least
  }
}
