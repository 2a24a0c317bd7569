import type { EditOf } from '../../edit/edit'
import type { ConductorId, PartId } from '../../model/design'
import type { Amps, Metres, Seconds, SquareMillimetres } from '../../units'
import type { Guard, NotChecked } from '../answers'

export type Kilograms = number

/** What may be chosen: everything, or the conductors and the fuses of the parts that are named. */
export type SizingScope =
  | 'all'
  | { readonly parts: readonly PartId[]; readonly conductors: readonly ConductorId[] }

export type Sizing = Sized | { readonly infeasible: readonly NoSize[] }

/** What is left out of a choice because nothing that is made would do. */
export interface LeftOut {
  /** Conductors, ways of fuses (branch ids), and devices of which the drop is not kept (`part/device`). */
  readonly conductors: ReadonlySet<ConductorId>
  readonly ways: ReadonlySet<string>
  readonly drops: ReadonlySet<string>
  /** Conductors that get no thinner than they are. */
  readonly noThinner: ReadonlySet<ConductorId>
}

/** What can be chosen together, and what cannot and why. */
export interface SizedInPart {
  /** null: nothing can. */
  readonly sized: Sized | null
  readonly none: readonly NoSize[]
}

export interface Sized {
  /** Everything that changes, as one step. */
  readonly edit: EditOf<'all'>
  /** Choices that differ from what is there. */
  readonly changes: readonly SizingChoice[]
  /** Every choice, with the reason why it is no smaller. */
  readonly choices: readonly SizingChoice[]
  /** What was to be chosen and could not, and is left as it is. */
  readonly kept: readonly Kept[]
  /** Copper of all conductors that carry power and have a length. null: some have no size yet. */
  readonly copperBeforeKg: Kilograms | null
  readonly copperAfterKg: Kilograms | null
}

export type SizingChoice = RunChoice | RatingChoice

export interface RunChoice {
  readonly conductor: ConductorId
  /** Keys in the size catalogue. */
  readonly from: string | null
  readonly to: string
  readonly because: SizeReason
}

export interface RatingChoice {
  readonly part: PartId
  /** Branch key: which way of a block. */
  readonly way: string
  readonly from: Amps | null
  readonly to: Amps
  readonly because: RatingReason
}

/** Why the next thinner size will not do. `thinner`: its key. */
export type SizeReason =
  /** There is no thinner size in the series that the table has a current for. */
  | { readonly key: 'thinnest' }
  | { readonly key: 'least'; readonly leastMm2: SquareMillimetres }
  /** No thinner one goes with the lugs of its terminals. */
  | { readonly key: 'lug'; readonly leastMm2: SquareMillimetres }
  | {
      /** current: worst case; array: that of PV strings, for hours; device: what guards let through; return: lasting current; ahead: the devices behind it. */
      readonly key: NeedKey
      readonly thinner: string
      readonly carriesA: Amps
      readonly neededA: Amps
      readonly guards: readonly Guard[]
    }
  | {
      readonly key: 'drop'
      readonly thinner: string
      readonly part: PartId
      readonly device: string
      /** With the thinner size, and what is allowed. */
      readonly percent: number
      readonly limitPercent: number
    }
  /** A short circuit heats it too much until its device clears it. */
  | ({ readonly key: 'heat'; readonly thinner: string } & HeatNeed)
  /** A bond to the frame is as thick as the lead of the battery. */
  | ({ readonly key: 'bond'; readonly thinner: string } & BondNeed)
  /** How a mesh divides, or a search without end, left no thinner one. */
  | { readonly key: 'settled'; readonly thinner: string }

/** Section that bears a short circuit until `part` has cleared it. */
export interface HeatNeed {
  readonly leastMm2: SquareMillimetres
  readonly faultA: Amps
  readonly seconds: Seconds
  readonly part: PartId
}

/** Section of a bond to the frame, and the battery lead that asks for it. */
export interface BondNeed {
  readonly leastMm2: SquareMillimetres
  readonly lead: ConductorId
}

export type NeedKey = 'current' | 'array' | 'device' | 'return' | 'ahead'

export type RatingReason =
  /** There is no smaller standard rating of its form. */
  | { readonly key: 'smallest'; readonly loadA: Amps }
  | { readonly key: 'load'; readonly loadA: Amps }
  /** What runs for hours; `share`: of the rating, that it carries for ever. */
  | { readonly key: 'lasting'; readonly lastingA: Amps; readonly share: number }
  /** `neededA` asks for a larger one, but then no size carries what it lets through. */
  | { readonly key: 'tight'; readonly loadA: Amps; readonly neededA: Amps }
  | {
      readonly key: 'inrush'
      readonly part: PartId
      readonly peakA: Amps
      readonly lastsS: Seconds
    }

export interface Kept {
  readonly conductor?: ConductorId
  readonly part?: PartId
  readonly way?: string
  readonly because: NotChecked | { readonly key: 'locked' | 'no-limit' | 'no-standard-sizes' }
}

export type NoSize =
  | {
      /** Even the thickest sizes leave too much drop. */
      readonly key: 'drop'
      readonly part: PartId
      readonly device: string
      readonly percent: number
      readonly limitPercent: number
      /** What conductors that are not to be changed take of it. */
      readonly fixedPercent: number
      /** Out and back, halved. */
      readonly lengthM: Metres
      /** Conductors on its way. */
      readonly on: readonly ConductorId[]
    }
  | {
      readonly key: 'ampacity'
      readonly conductor: ConductorId
      readonly neededA: Amps
      /** The thickest standard size and what it carries. */
      readonly thickest: string
      readonly carriesA: Amps
    }
  | {
      readonly key: 'rating'
      readonly part: PartId
      readonly way: string
      readonly neededA: Amps
      readonly largestA: Amps
    }
  /** Sizes of a mesh kept changing with each other. */
  | { readonly key: 'unsettled'; readonly conductors: readonly ConductorId[] }
