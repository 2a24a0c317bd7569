import type { Article, Making } from '../tables/making'
import type { OwnRules } from '../tables/ownrules'
import type { OwnConductor } from '../tables/ownsizes'
import type { Surround } from '../tables/surround'
import type { Metres, Millimetres } from '../units'
import type { Bench } from './bench'
import type { TestRecord } from './commissioning'
import type { Values } from './fields'
import type { Handover } from './handover'
import type { Level } from './level'

/** Number of the file format that this engine writes. Older numbers are upgraded step by step when read. */
export const FORMAT = 1

export type PartId = string
export type ConductorId = string

export interface TerminalRef {
  readonly part: PartId
  readonly terminal: string
}

export type Turn = 0 | 90 | 180 | 270

/** single-line: feed and return as one line; both-poles: every conductor; data: links only. */
export type ViewKey = 'single-line' | 'both-poles' | 'data'

export interface Place {
  readonly x: Millimetres
  readonly y: Millimetres
}

/** What a view other than the single-line one has of its own. */
export interface InViews<T> {
  readonly 'both-poles'?: T
  readonly data?: T
}

export interface Part {
  /** Permanent and opaque: "p12". */
  readonly id: PartId
  /** Key of its kind. A kind that this version does not know is kept as a placeholder and written back unchanged. */
  readonly kind: string
  /** "F1", after IEC 81346-2. Unique in the design. */
  readonly designation: string
  /** What people call it: "Fridge". May be empty. */
  readonly name: string
  /** Where it sits in the vehicle, own words: "under bench". May be empty. */
  readonly location: string
  /** Top left corner of the turned symbol box, on the 2.5 mm grid. */
  readonly x: Millimetres
  readonly y: Millimetres
  /** Where it was moved by hand in other views than the single-line one; absent: they follow that one. */
  readonly at?: InViews<Place>
  readonly turn: Turn
  readonly mirrored: boolean
  readonly values: Values
  /** Drawing notes that it refers to, by number from 1; ascending. Absent: none. */
  readonly notes?: readonly number[]
}

export interface Conductor {
  readonly id: ConductorId
  /** "W7": printed on the conductor at both ends. Unique in the design. */
  readonly number: string
  readonly from: TerminalRef
  readonly to: TerminalRef
  /** For a return: the feed it was drawn with. Feed and return read as one line in the single-line view. */
  readonly returnOf: ConductorId | null
  /** Key in the size catalogue: "16mm2", "6awg", or of an own conductor: "own:1". null: not chosen yet. */
  readonly size: string | null
  /** The size is the designer's own choice: sizing leaves it. */
  readonly locked?: boolean
  /** One way. null: not measured yet. */
  readonly lengthM: Metres | null
  /** IEC 60757 letters: "RD", "BK", "GNYE". */
  readonly colour: string
  /** Highest continuous temperature of the insulation, °C. null: the rule set's usual one. */
  readonly insulationC: number | null
  /** In a sheath, conduit or enclosure throughout: longer runs are allowed ahead of the first device. */
  readonly sheathed: boolean
  /** What keeps its heat in. Absent: a conduit where it is sheathed throughout, else nothing, free in air. */
  readonly surround?: Surround
  /** Runs through an engine space. */
  readonly engineSpace: boolean
  /** Conductors that carry current and run bunched together, this one included. */
  readonly bunched: number
  /** A designer's own figure in place of the computed worst case; needs a reason, and is marked everywhere. */
  readonly designCurrent: { readonly amps: number; readonly reason: string } | null
  readonly remark: string
  /** Corner points of segments that were dragged by hand; empty: routed freely. */
  readonly path: readonly Place[]
  /** The same of other views than the single-line one; absent: they follow that one. */
  readonly pathIn?: InViews<readonly Place[]>
}

export type SystemVoltage = 12 | 24 | 48

export interface Settings {
  readonly name: string
  readonly customer: string
  readonly vehicle: string
  readonly designer: string
  /** Who built it in; absent: not stated. */
  readonly installer?: string
  /** How to reach them: one line each of address, telephone, mail. */
  readonly contact?: string
  readonly revision: string
  /** ISO 8601 date, "2026-03-04". */
  readonly date: string
  readonly systemV: SystemVoltage
  /** Key of the rule set; "own": the designer's own, in `ownRules` of the design. */
  readonly ruleSet: string
  readonly ambientC: number
  /** Lowest temperature that the PV array is expected to see, °C: decides the cold open-circuit voltage. */
  readonly coldestC: number
  /** Drawing notes, one a line, numbered from 1 in this order. */
  readonly notes: string
}

/** An outline round a place, with the name that people give it: "under bench". */
export interface Zone {
  /** "z1" */
  readonly id: string
  readonly name: string
  /** What it is drawn round; its edges keep their distance from these parts. Empty: it stays where it was put. */
  readonly parts: readonly PartId[]
  /** On the 2.5 mm grid. */
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
}

/** Words of the designer's own on the sheet. */
export interface SheetText {
  /** "t1" */
  readonly id: string
  /** One line or more. */
  readonly text: string
  /** The view that it belongs to. */
  readonly view: 'all' | ViewKey
  /** Top left corner, on the 2.5 mm grid. */
  readonly x: Millimetres
  readonly y: Millimetres
}

/** A finding that somebody has looked at and lets stand, with the reason in writing. */
export interface Accepted {
  /** Key of the finding. */
  readonly key: string
  /** Its level at that time: graver than this, it is not accepted any more. */
  readonly level: Level
  /** Its figure at that time: further beyond its limit than this, it is not accepted any more either. */
  readonly actual?: number | 'unlimited'
  readonly reason: string
  readonly by?: string
  /** ISO 8601 date. */
  readonly date?: string
}

/** A state of the design that was given out. It is never changed afterwards. */
export interface Revision {
  /** "B". Unique in the design. */
  readonly number: string
  /** ISO 8601 date. */
  readonly date: string
  readonly by: string
  readonly reason: string
  /** SHA-256 over the words above and the file as it was issued. */
  readonly digest: string
  /** That file, without the revisions before it and without photographs; packed (freeze.ts). */
  readonly frozen: string
}

export interface Design {
  /** Permanent id of the design, for the browser's database. */
  readonly id: string
  readonly settings: Settings
  /** The designer's own rules; kept while another rule set is chosen. */
  readonly ownRules?: OwnRules
  /** The designer's own conductors, each with a key of its own; beside the built-in size catalogue. */
  readonly ownConductors?: readonly OwnConductor[]
  readonly parts: readonly Part[]
  readonly conductors: readonly Conductor[]
  /** One for each key at most. */
  readonly accepted?: readonly Accepted[]
  readonly zones?: readonly Zone[]
  readonly texts?: readonly SheetText[]
  readonly handover?: Handover
  /** What the workshop records while it builds. */
  readonly bench?: Bench
  /** How the workshop makes conductors up. Absent: as usual. */
  readonly making?: Making
  /** Own article numbers, prices and weights; one for each key at most. */
  readonly articles?: readonly Article[]
  /** What was measured and signed while the system was put to the test; lines are only ever added. */
  readonly commissioning?: readonly TestRecord[]
  /** Issued revisions, the oldest first. */
  readonly revisions?: readonly Revision[]
}
