import type { ConductorId, PartId } from '../../model/design'

/** Groups of steps in the order in which they are made: nothing is switched on before what leads to it was looked at. */
export const STEP_GROUPS = [
  'visual',
  'polarity',
  'resistance',
  'isolating',
  'source-alone',
  'loads',
  'relays',
  'shunts',
  'load-side',
  'far-loads',
  'charging',
  'cut-outs',
  'data',
  'alerts',
] as const
export type StepGroup = (typeof STEP_GROUPS)[number]

/** What is to be borne in mind before a step. */
export type StepCaution =
  | 'everything-isolated'
  | 'battery-short'
  | 'arc'
  | 'array-live'
  | 'mains'
  | 'moves'
  | 'runs-dry'
  | 'gets-hot'
  | 'gas'
  | 'vented'
  | 'no-ohms-on-live'
  | 'frees-electronics'
  | 'engine'
  | 'heavy-current'

export type Instrument =
  | 'eyes'
  | 'hand'
  | 'voltmeter'
  | 'ohmmeter'
  | 'clamp'
  | 'display'
  | 'adjustable-supply'

/** Where to touch; without a terminal: at the part as a whole. */
export interface Probe {
  readonly part: PartId
  readonly terminal: string | null
}

export type StepUnit = 'V' | 'A' | 'Ω' | 'kΩ'

/** Another reading of the step that this one is held against: times · it + plus, within share · |it| + amount. */
export interface Against {
  readonly reading: string
  readonly times: 1 | -1
  readonly plus: number
  readonly share: number
  readonly amount: number
}

/** Why nothing can be expected, with the parts and conductors to look at. */
export type NotExpected =
  | 'no-draw'
  | 'no-supply'
  | 'no-operating-point'
  | 'missing-run'
  | 'no-internal-resistance'
  | 'no-threshold'
  | 'no-voltage'
  | 'no-array'
  | 'no-alert'
  | 'no-lead'
  | 'joined-as-drawn'
  | 'untrue-as-drawn'
  | 'not-joined'

export type Expected =
  /** A figure between bounds; null: no bound on that side. `usual`: what the calculation gives. */
  | {
      readonly is: 'figure'
      readonly usual: number | null
      readonly least: number | null
      readonly most: number | null
      readonly unit: StepUnit
      readonly against?: Against
    }
  /** Something that is so or is not. `what`: figures that it hangs on, in short: "3: 15 A". */
  | { readonly is: 'seen'; readonly what: string }
  | {
      readonly is: 'not-known'
      readonly because: NotExpected
      readonly parts: readonly PartId[]
      readonly conductors: readonly ConductorId[]
    }

export interface Reading {
  /** Permanent inside the step. */
  readonly key: string
  /** Which words it is asked in. */
  readonly asks: ReadingAsks
  readonly instrument: Instrument
  /** Voltage and resistance: between the first and the second. */
  readonly at: readonly Probe[]
  readonly conductors: readonly ConductorId[]
  readonly expected: Expected
  /** Name of the way or contact, where the part has several. */
  readonly name?: string
}

export type ReadingAsks =
  | 'so'
  | 'voltage'
  | 'voltage-off'
  | 'voltage-on'
  | 'fuse-out'
  | 'isolator-open'
  | 'isolator-closed'
  | 'coil'
  | 'resistance'
  | 'apart'
  | 'apart-frame'
  | 'current'
  | 'shunt'
  | 'shunt-zero'
  | 'posts'
  | 'at-load'
  | 'opens-at'
  | 'closes-at'
  | 'stops-at'
  | 'set-at'

/** How the system is set before the readings are taken. What is not named stands as in the group before. */
export interface Setting {
  /** Everything isolated: batteries off, fuses out, arrays covered, mains unplugged, engine off. */
  readonly isolated?: true
  /** What draws: nothing, everything that may be on at once, or these alone. */
  readonly loads?: 'off' | 'all' | readonly PartId[]
  /** Sources that give; all others rest. */
  readonly sources?: readonly PartId[]
  /** Hand switches that are on; all others off. */
  readonly on?: readonly PartId[]
  readonly open?: readonly PartId[]
  /** Batteries that are taken off: fuse out or lead lifted. */
  readonly off?: readonly PartId[]
  /** What shows the readings, and stays on. */
  readonly stays?: readonly PartId[]
  /** Left out of 'all', as everything at once is more than something may carry. */
  readonly without?: readonly PartId[]
}

export interface TestStep {
  /** Permanent: the same for the same test in the next version of the design. */
  readonly key: string
  readonly group: StepGroup
  /** Which words it is told in. */
  readonly tells: StepTells
  /** What is tested. */
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
  /** A place, where the step is about one. */
  readonly place?: string
  readonly cautions: readonly StepCaution[]
  readonly setting: Setting
  readonly readings: readonly Reading[]
}

export type StepTells =
  | 'conductors'
  | 'terminations'
  | 'place'
  | 'fuses-fitted'
  | 'battery-place'
  | 'mains-papers'
  | 'battery-polarity'
  | 'array-polarity'
  | 'apart'
  | 'off-frame'
  | 'frame'
  | 'returns'
  | 'way-round-shunt'
  | 'isolator'
  | 'fuses'
  | 'battery-alone'
  | 'alternator-alone'
  | 'charger-alone'
  | 'array-alone'
  | 'converter-alone'
  | 'load'
  | 'socket'
  | 'inverter'
  | 'relay'
  | 'changeover'
  | 'latching'
  | 'combiner'
  | 'hand-switch'
  | 'thermostat'
  | 'float-switch'
  | 'run-signal'
  | 'shunt-zero'
  | 'shunt-clamp'
  | 'one-load'
  | 'all-loads'
  | 'far-load'
  | 'charge'
  | 'cut-out'
  | 'inverter-stop'
  | 'charger-stop'
  | 'data-link'
  | 'sender'
  | 'display'
  | 'battery-alert'
  | 'gas-alert'
  | 'tank-alert'
  | 'temperature-alert'
  | 'sense'
