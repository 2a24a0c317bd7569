import type { Bench } from '../model/bench'
import type { TestRecord } from '../model/commissioning'
import type {
  Accepted,
  Conductor,
  ConductorId,
  Design,
  Part,
  PartId,
  Settings,
  SheetText,
  TerminalRef,
  ViewKey,
  Zone,
} from '../model/design'
import type { Value } from '../model/fields'
import type { Handover } from '../model/handover'
import type { RevisionWords } from '../model/revision'
import type { Article, Making } from '../tables/making'
import type { OwnRules } from '../tables/ownrules'
import type { OwnConductor } from '../tables/ownsizes'

/**
 * An edit is data: it can be named in the history, offered as a fix, sent to a worker, and replayed in a test.
 * `apply` (apply.ts) turns a design and an edit into a new design, or refuses and says why. Nothing is mutated;
 * untouched parts and conductors keep their identity (===), so a history of designs is cheap.
 */
export type Edit =
  | {
      readonly do: 'add'
      readonly parts: readonly Part[]
      readonly conductors: readonly Conductor[]
      readonly texts?: readonly SheetText[]
      /** Outlines round parts that come with it or are there already. */
      readonly zones?: readonly Zone[]
      /** Own conductors that the conductors are of, where the design has none such. */
      readonly ownConductors?: readonly OwnConductor[]
    }
  | { readonly do: 'remove'; readonly parts: readonly PartId[]; readonly conductors: readonly ConductorId[] }
  | {
      readonly do: 'move'
      readonly to: readonly { readonly part: PartId; readonly x: number; readonly y: number }[]
      /** The view that it is done in. Default: the single-line one, which the others follow. */
      readonly view?: ViewKey
    }
  | {
      /** Parts stand again where the single-line view has them, and their conductors run as there. */
      readonly do: 'follow'
      readonly parts: readonly PartId[]
      readonly view: Exclude<ViewKey, 'single-line'>
    }
  | { readonly do: 'turn'; readonly parts: readonly PartId[]; readonly by: 90 | 180 | 270 }
  | { readonly do: 'mirror'; readonly parts: readonly PartId[] }
  | { readonly do: 'part'; readonly part: PartId; readonly set: PartChange }
  | { readonly do: 'value'; readonly part: PartId; readonly field: string; readonly value: Value }
  | { readonly do: 'join'; readonly conductor: Conductor }
  | {
      readonly do: 'reconnect'
      readonly conductor: ConductorId
      readonly end: 'from' | 'to'
      readonly to: TerminalRef
    }
  | { readonly do: 'conductor'; readonly conductors: readonly ConductorId[]; readonly set: ConductorChange }
  | { readonly do: 'settings'; readonly set: Partial<Settings> }
  | { readonly do: 'rules'; readonly own: OwnRules | null }
  | { readonly do: 'own conductors'; readonly own: readonly OwnConductor[] }
  | { readonly do: 'accept'; readonly accepted: Accepted }
  | { readonly do: 'unaccept'; readonly key: string }
  | { readonly do: 'zone'; readonly zone: Zone }
  | { readonly do: 'unzone'; readonly id: string }
  | { readonly do: 'text'; readonly text: SheetText }
  | { readonly do: 'untext'; readonly ids: readonly string[] }
  | { readonly do: 'notes'; readonly notes: readonly NoteLine[] }
  | { readonly do: 'refer'; readonly part: PartId; readonly notes: readonly number[] }
  | { readonly do: 'making'; readonly making: Making | null }
  | { readonly do: 'articles'; readonly articles: readonly Article[] }
  | { readonly do: 'record'; readonly records: readonly TestRecord[] }
  | { readonly do: 'handover'; readonly set: Partial<Handover> }
  | ({ readonly do: 'issue' } & RevisionWords)
  | { readonly do: 'take back'; readonly number: string }
  | { readonly do: 'bench'; readonly bring: Bench }
  | { readonly do: 'all'; readonly edits: readonly Edit[] }

/** One member of the union: `EditOf<'move'>`. */
export type EditOf<K extends Edit['do']> = Extract<Edit, { readonly do: K }>

/** A drawing note, and the number that it had before; null: it is new. */
export interface NoteLine {
  readonly text: string
  readonly was: number | null
}

export type PartChange = Partial<Pick<Part, 'designation' | 'name' | 'location'>>
export type ConductorChange = Partial<
  Pick<
    Conductor,
    | 'number'
    | 'returnOf'
    | 'size'
    | 'locked'
    | 'lengthM'
    | 'colour'
    | 'insulationC'
    | 'sheathed'
    | 'surround'
    | 'engineSpace'
    | 'bunched'
    | 'designCurrent'
    | 'remark'
    | 'path'
    | 'pathIn'
  >
>

/** A refused edit: the design is unchanged. `why` is one plain sentence for the person who tried. */
export interface Refusal {
  readonly refused: true
  readonly code: string
  readonly why: string
}

export type EditResult = { readonly refused: false; readonly design: Design } | Refusal
