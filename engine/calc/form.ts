import type { Amps, MaybeUnlimited, Ohms, Volts } from '../units'

/**
 * The network form: what stands between a drawing (ids, parts, terminals) and the index arrays of the kernels.
 * Plain data, safe to write as JSON. Every calculation of the engine that walks the graph starts here.
 *
 * Sign: a branch current is positive from `from` to `to`. A device delivers x amps into `positive` and takes
 * x amps out of `negative`, with min ≤ x ≤ max; a source has x > 0, a load x < 0.
 */
export interface NetworkForm {
  readonly nodes: readonly string[]
  readonly branches: readonly NetworkBranch[]
  readonly devices: readonly NetworkDevice[]
}

export type BranchKind = 'conductor' | 'fuse' | 'contact' | 'shunt'

export interface NetworkBranch {
  readonly id: string
  readonly from: string
  readonly to: string
  /** Ω, above 0 and finite. Never clamped. */
  readonly resistance: Ohms
  readonly kind: BranchKind
  /** A. A fuse's rating limits the flow of the protection check; a contact's or shunt's is for reports only. */
  readonly rating?: Amps
  /** A. What the conductor may carry under the rule set in force. */
  readonly ampacity?: Amps
}

export interface NetworkDevice {
  readonly id: string
  readonly positive: string
  readonly negative: string
  /** A, at most 0; 'unlimited' means no lower bound. */
  readonly min: MaybeUnlimited
  /** A, at least 0; 'unlimited' means no upper bound. */
  readonly max: MaybeUnlimited
  /** A. What the device can feed into a fault for ever. */
  readonly sustainedFault: MaybeUnlimited
  /** V. Present on batteries only: a device with an emf is a battery. */
  readonly emf?: Volts
  /** Ω. */
  readonly internalResistance?: Ohms
}
