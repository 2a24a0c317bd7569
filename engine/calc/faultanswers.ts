import type { ConductorId, PartId, TerminalRef } from '../model/design'
import type { Amps, MaybeUnlimited, Seconds } from '../units'
import type { Answer } from './answer'

/** What one guarding device sees of the least short circuit at the far end of its conductor. */
export interface Clearing {
  readonly part: PartId
  /** Which way of a block. */
  readonly key: string
  /** Through the device, and through the conductor, A. */
  readonly amps: Amps
  readonly runAmps: Amps
  /** Latest time in which it clears, s; null: it need not clear so small a current at all. */
  readonly within: Answer<Seconds | null>
}

/** Short circuits at one end of a conductor. */
export interface EndFault {
  /** The greatest: cold copper, full batteries, all sources feeding, neither return nor fuses nor contacts in the way. */
  readonly greatest: Answer<MaybeUnlimited>
  /** The least: hot copper, batteries at cut-off, the return beside it in the way; 0 where no battery feeds it. */
  readonly least: Answer<Amps>
  /** The devices that guard the conductor from its other end, those that carry part of the least current. */
  readonly clearing: readonly Clearing[]
}

/** The most that a short circuit anywhere can drive through one protective device, with the two ends of it. */
export interface DeviceFault {
  readonly part: PartId
  readonly key: string
  readonly greatest: Answer<{
    readonly amps: MaybeUnlimited
    readonly at: TerminalRef | null
    /** null: the return, or the rest of the network. */
    readonly to: TerminalRef | null
    /** False: the network is so large that only short circuits at the device's own ends were tried. */
    readonly everyPair: boolean
  }>
}

/** What flows through a device while one load starts and everything else runs at its worst. */
export interface StartAnswer {
  readonly part: PartId
  readonly amps: Amps
  readonly seconds: Seconds
}

export interface FaultAnswers {
  /** Conductors that are no return. */
  readonly runs: ReadonlyMap<ConductorId, { readonly from: EndFault; readonly to: EndFault }>
  /** By `${part}/${branch}`. */
  readonly devices: ReadonlyMap<string, DeviceFault>
  /** By `${part}/${branch}`; devices that no starting load is fed through are left out. */
  readonly starts: ReadonlyMap<string, readonly StartAnswer[]>
}
