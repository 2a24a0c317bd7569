import type { Metres } from '../units'

/** When something was recorded at the bench, and where. */
export interface Stamp {
  /** ISO 8601, UTC, to the millisecond: "2026-03-04T09:30:00.000Z". Compared as text. */
  readonly at: string
  /** Id of the device that it was recorded on; its name stands in `Bench.devices`. */
  readonly by: string
}

/** What is recorded of one conductor, with the number that it had then: "W12". */
export interface Entry extends Stamp {
  readonly number: string
}

/** What the workshop does to a conductor, in this order. Keys stand in files. */
export const BENCH_STEPS = ['cut', 'crimped', 'labelled', 'terminated', 'torqued'] as const
export type BenchStep = (typeof BENCH_STEPS)[number]

/** A terminal of a part, by their keys. */
export interface BuiltEnd {
  readonly part: string
  readonly terminal: string
}

/** What a step was done to; only what decides that step. It tells later whether the drawing has changed since. */
export interface WorkedOn {
  readonly size?: string | null
  readonly lengthM?: Metres | null
  readonly colour?: string
  readonly from?: BuiltEnd
  readonly to?: BuiltEnd
  /** Forms of the terminals, keys of `tables/fittings.ts`; null: not stated. */
  readonly fromForm?: string | null
  readonly toForm?: string | null
}

export interface Tick extends Entry {
  readonly step: BenchStep
  /** False: it was ticked, and the tick was taken back. */
  readonly done: boolean
  readonly on?: WorkedOn
}

/** What was built otherwise than drawn. A value of null: it is as drawn after all. */
export type BuiltFact =
  | { readonly what: 'size'; readonly value: string | null }
  | { readonly what: 'lengthM'; readonly value: Metres | null }
  | { readonly what: 'from' | 'to'; readonly value: BuiltEnd | null }
  | { readonly what: 'note'; readonly value: string | null }
export type BuiltWhat = BuiltFact['what']
export const BUILT_WHATS: readonly BuiltWhat[] = ['size', 'lengthM', 'from', 'to', 'note']

/** One device's word about one fact; each device has one, and the latest counts. */
export type Built = BuiltFact &
  Entry & {
    /** Time of the latest word of another device that was on hand when this was written. */
    readonly knew?: string
  }

export interface Photo extends Entry {
  /** Unique in the design. */
  readonly photo: string
  /** Base64 of a small JPEG; null: taken out again. */
  readonly jpeg: string | null
}

/** Everything recorded of one conductor. */
export interface BenchRecord {
  readonly conductor: string
  /** One a step at most. */
  readonly ticks: readonly Tick[]
  /** One a fact and device at most. */
  readonly built?: readonly Built[]
  readonly photos?: readonly Photo[]
}

/** The tightening torque of a terminal as the maker of the part states it. */
export interface StatedTorque extends Stamp {
  readonly part: string
  readonly terminal: string
  /** null: taken back. */
  readonly newtonMetres: number | null
}

/** A device that records, and what people call it: "bench tablet". */
export interface BenchDevice {
  readonly device: string
  readonly name: string
  readonly at: string
}

/**
 * What the workshop records while it builds. Every list is in a fixed order, so that the same records give the same
 * bytes. Two of them are joined by `mergeBench`; nothing is ever lost by that.
 */
export interface Bench {
  /** Also of conductors that are not in the drawing any more: kept aside. */
  readonly conductors: readonly BenchRecord[]
  readonly torques?: readonly StatedTorque[]
  readonly devices?: readonly BenchDevice[]
}

export const NO_BENCH: Bench = { conductors: [] }

export const BENCH_BOUNDS = {
  lengthM: 1000,
  newtonMetres: [0.1, 500],
  note: 500,
  deviceName: 40,
  /** Letters of base64: 60 kB of JPEG. */
  jpeg: 80_000,
} as const
