import type { ConductorId, PartId } from '../model/design'
import type { DeviceRole } from '../model/kind'
import type { Ampacity } from '../tables/ampacity'
import type { CircuitClass } from '../tables/rulesets'
import type { Amps, MaybeUnlimited, Ohms, Volts } from '../units'
import type { Answer, NotChecked } from './answer'
import type { FaultAnswers } from './faultanswers'

export type { Ampacity } from '../tables/ampacity'

export type { Answer, NotChecked } from './answer'

/** Device currents that bring about a worst case: a person reads them as "inverter at full draw, chargers off". */
export interface WitnessLine {
  readonly part: PartId
  /** Device key inside the part, and its name when the part has several. */
  readonly device: string
  readonly amps: Amps
}

export interface WorstCase {
  readonly amps: MaybeUnlimited
  readonly witness: readonly WitnessLine[]
  /** Unlimited: parts without a limit that let it grow. Else empty. */
  readonly unlimitedBy: readonly PartId[]
  /** It divides with a parallel way, so the figure rests on resistances: of conductors, contacts, fuses, the frame. */
  readonly shared: boolean
}

/** One member of the cut that protects an end: a protective device, or a source that limits itself. */
export interface Guard {
  readonly is: 'device' | 'source'
  readonly part: PartId
  /** Branch or device key inside the part: which way of a fuse block. */
  readonly key: string
  readonly amps: Amps
}

export interface EndAnswer {
  /** Greatest sustained current that can come out of the rest of the network into this end. */
  readonly amps: MaybeUnlimited
  /** Named nearest the conductor; empty when unlimited. */
  readonly guards: readonly Guard[]
  /** Unlimited: the conductors of one way from the source, and the source. */
  readonly way: readonly ConductorId[]
  readonly source: PartId | null
}

/** thin-return is the verdict on returns; the others are on every conductor that a source can feed. */
export type Verdict =
  | 'unprotected'
  | 'device-too-big'
  | 'sources-add-up'
  | 'thin-return'
  | 'near-source'
  | 'protected'

/** What a return can carry for as long as no fuse blows, and what limits it. */
export interface Sustained {
  readonly amps: MaybeUnlimited
  readonly guards: readonly Guard[]
  /** Unlimited: the feeds without protection that are the cause, by the conductor at which each is mended. Else empty. */
  readonly bare: readonly ConductorId[]
}

/** How a conductor's current counts: how much of what it may carry passes the load-side shunt. */
export type Metered = 'measured' | 'bypasses' | 'shared' | 'source-side' | 'no-load-shunt'

export interface RunAnswer {
  /** Worst-case current in each direction, A ≥ 0; forward is from → to. */
  readonly forward: Answer<WorstCase>
  readonly backward: Answer<WorstCase>
  /** The greater of the two, or the designer's own figure. */
  readonly design: Answer<MaybeUnlimited>
  readonly ownFigure: boolean
  readonly from: Answer<EndAnswer>
  readonly to: Answer<EndAnswer>
  readonly verdict: Answer<Verdict>
  /**
   * The end on which a verdict of unprotected, device-too-big or sources-add-up rests; else null. It may stand though
   * the answers of the ends do not, where a figure is missing that could only make it worse.
   */
  readonly cause: EndAnswer | null
  /** Unprotected ends only: length from the source to the far end of this run, and what the rule set allows, m. */
  readonly aheadM: number | null
  readonly aheadAllowedM: number | null
  /** Returns: largest current that lasts in any state that blows no fuse. null: not a return. */
  readonly sustained: Answer<Sustained> | null
  readonly ampacity: Answer<Ampacity>
  readonly ohms: Answer<Ohms>
  readonly metered: Metered | null
  /** Does it carry power at all? Data links, sense leads and mains do not count in the network. */
  readonly nature: 'positive' | 'negative' | 'other' | 'data' | 'mains'
}

/** A branch inside a part (fuse, contact, shunt) or a bar. */
export interface BranchAnswer {
  readonly part: PartId
  readonly key: string
  readonly worst: Answer<WorstCase>
  readonly ratingA: Amps | null
}

export interface ShuntAnswer {
  readonly part: PartId
  readonly role: 'battery' | 'load'
  /**
   * Share of each device's current that passes, for the devices of the system that the shunt stands in:
   * 1 measured in full, 0 passes it by, -1 measured the wrong way round; a range where it depends on which
   * battery balances. At its worst over the throws of changeovers; without devices that nothing can feed.
   */
  readonly shares: readonly MeterShare[]
  /** Most of what passes it passes it backwards. */
  readonly reversed: boolean
  /** Change of the reading, A, for 1 A that one battery gives another beside it: above 0, batteries on both sides. */
  readonly betweenBatteries: number
  /** Shares between 0 and 1 lean on a resistance that stands in for a missing figure: why they are not figures. */
  readonly leaning: NotChecked | null
  readonly over: Answer<ReadingError>
  readonly under: Answer<ReadingError>
}

export interface MeterShare {
  readonly part: PartId
  readonly device: string
  readonly role: DeviceRole
  readonly from: number
  readonly to: number
  /** What the shunt's role asks for. */
  readonly expected: 0 | 1
}

export interface ReadingError {
  readonly amps: MaybeUnlimited
  readonly causes: readonly { readonly part: PartId; readonly device: string; readonly amps: Amps }[]
}

/** Worst-case voltage drop of one device that draws, out and return, sources off, conductors warm. */
export interface DropAnswer {
  readonly part: PartId
  readonly device: string
  readonly service: CircuitClass
  /** % of the system voltage that the rule set allows. */
  readonly limitPercent: number
  readonly drop: Answer<Drop>
}

export interface Drop {
  /** Everything between the battery terminals and the load. */
  readonly volts: Volts
  /** The part that conductors and their terminations take: what limits of drop are stated for. */
  readonly conductorsV: Volts
  /** The same as % of the system voltage, or of that of the circuit where it is another. */
  readonly percent: number
  /** What it is a percentage of, V. */
  readonly ofV: Volts
  /** What each conductor on the way takes, greatest first. */
  readonly conductors: readonly { readonly conductor: ConductorId; readonly volts: Volts }[]
  /** What fuses, contacts and shunts on the way take together. */
  readonly devicesV: Volts
  readonly witness: readonly WitnessLine[]
}

/** Everything computed from one design. Plain data with Maps; crosses to and from a worker as it is. */
export interface Answers {
  readonly runs: ReadonlyMap<ConductorId, RunAnswer>
  /** Key `${part}/${branch}`. */
  readonly branches: ReadonlyMap<string, BranchAnswer>
  /** Throughput of bars and other merged terminals, by part. */
  readonly bars: ReadonlyMap<PartId, Answer<WorstCase>>
  readonly shunts: ReadonlyMap<PartId, ShuntAnswer>
  /** Voltage drop of everything that draws. Key `${part}/${device}`. */
  readonly drops: ReadonlyMap<string, DropAnswer>
  /** Short-circuit currents at conductors and protective devices, and how they are cleared. */
  readonly faults: FaultAnswers
}
