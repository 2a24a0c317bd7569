import type { CutMember } from './protection'

/** A figure as JSON: 'unlimited' where it has no end. */
export type Figure = number | 'unlimited'

/** No answer, with its reason and what to look at. */
export interface NotMade {
  readonly notChecked: string
  readonly devices?: readonly string[]
  readonly fuses?: readonly string[]
}

/** Everything that is computed of a network file. Documented in public/network-form.schema.json; ids are the file's. */
export interface NetworkReport {
  readonly counts: {
    readonly nodes: number
    readonly branches: number
    readonly devices: number
    readonly nets: number
  }
  readonly branches: readonly BranchReport[]
  readonly shunts: readonly ShuntReport[]
  readonly loadFlow: LoadFlowReport | NotMade
  readonly faults: { readonly greatest: FaultReport | NotMade; readonly least: FaultReport | NotMade }
  readonly breaking: BreakingReport | NotMade
  readonly drops: readonly (DropReport | (NotMade & { readonly device: string }))[]
}

export interface BranchReport {
  readonly id: string
  /** Worst-case current in A, [least, greatest], positive from → to. */
  readonly envelope: readonly [Figure, Figure] | NotMade
  /** Conductors: what can come into each end and what limits it. */
  readonly protection?: { readonly from: EndReport; readonly to: EndReport }
  /** Returns: largest current in A that lasts in a state that blows no fuse. */
  readonly sustained?: SustainedReport | NotMade
  /** V: largest that it takes with the sources off. */
  readonly worstDrop: Figure | NotMade
}

export interface SustainedReport {
  readonly amps: Figure
  readonly sense: 'forward' | 'backward'
}

export type EndReport =
  | { readonly flow: number; readonly cut: readonly CutMember[] }
  | { readonly flow: 'unlimited'; readonly path: readonly string[]; readonly source: string }
  | NotMade

export interface ShuntReport {
  readonly id: string
  readonly role: 'battery' | 'load'
  readonly reversed: boolean
  readonly betweenBatteries: number
  readonly shares: readonly ShareReport[]
  readonly over: ReadingReport
  readonly under: ReadingReport
}

export interface ShareReport {
  readonly device: string
  readonly nature: 'battery' | 'load' | 'source' | 'two-way'
  /** One figure, or a range where it depends on who balances; null where nothing can. */
  readonly share: number | readonly [number, number] | null
  /** What the role asks for; null for devices of other circuits. */
  readonly expected: 0 | 1 | null
}

export interface ReadingReport {
  readonly amps: Figure
  /** null where no emf is known. */
  readonly watts: Figure | null
  readonly causes: readonly { readonly device: string; readonly amps: number }[]
}

export interface LoadFlowReport {
  readonly steps: number
  readonly residualAmps: number
  readonly nodes: readonly { readonly id: string; readonly volts: number; readonly reference: string }[]
  readonly branches: readonly { readonly id: string; readonly amps: number }[]
  readonly devices: readonly { readonly id: string; readonly amps: number }[]
}

export interface FaultReport {
  /** A; null on the return, to which the currents are counted. */
  readonly nodes: readonly { readonly id: string; readonly amps: Figure | null }[]
}

export interface BreakingReport {
  /** False: only short circuits at the device's own ends were tried, the network being very large. */
  readonly everyPair: boolean
  /** `between`: ends of the worst short circuit; one end where sources push out of their part. */
  readonly devices: readonly {
    readonly id: string
    readonly amps: Figure
    readonly between: readonly string[]
  }[]
}

export interface DropReport {
  readonly device: string
  readonly volts: Figure
  readonly percent: Figure
  readonly supply: readonly string[]
  readonly everySupply: boolean
  /** Loads that are off in the worst case. */
  readonly loadsOff: number
  readonly parts: readonly { readonly branch: string; readonly volts: number }[]
}

/** Ten figures are more than any measurement; Infinity becomes 'unlimited', −0 becomes 0. */
export const figure = (x: number): Figure => (Number.isFinite(x) ? tidy(x) : 'unlimited')
export const tidy = (x: number): number => Number(x.toPrecision(10)) + 0
