import type { Conductor, Design, Part, SheetText, Zone } from '../../model/design'
import { WORK_RECORDS } from '../../model/workrecords'
import { surroundOf } from '../../tables/surround'
import type { Comparison, FieldChange, ItemChanges } from './changes'
import { fieldChanges, valueChanges } from './fields'

/** Not compared: what a design is known by, and what is recorded of the work. */
const APART = ['id', 'revisions', ...WORK_RECORDS]
const COMPARED = [
  'settings',
  'ownRules',
  'ownConductors',
  'parts',
  'conductors',
  'accepted',
  'zones',
  'texts',
]
/** Revision and date are what a state is called; whom to reach is said in the handover pack alone. */
const NO_CHANGE = ['revision', 'date', 'installer', 'contact']

/**
 * What differs between two states of a design, the earlier first: things by their permanent ids, facts field by field,
 * mere movement on the drawing apart. A part of another kind is another part, though its id be the same. What is
 * recorded while building, testing and handing over does not count. Pure; linear in both.
 */
export function compareDesigns(before: Design, after: Design): Comparison {
  return {
    parts: things(before.parts, after.parts, ({ id }) => id, partChanges, {
      moved: (a, b) =>
        a.x !== b.x || a.y !== b.y || a.turn !== b.turn || a.mirrored !== b.mirrored || differIn('at', a, b),
      alike: (a, b) => a.kind === b.kind,
    }),
    conductors: things(before.conductors, after.conductors, ({ id }) => id, conductorChanges, {
      moved: (a, b) => differIn('path', a, b) || differIn('pathIn', a, b),
    }),
    zones: things(before.zones, after.zones, ({ id }) => id, zoneChanges, {
      moved: (a, b) => isElsewhere(a, b) || a.w !== b.w || a.h !== b.h,
    }),
    texts: things(before.texts, after.texts, ({ id }) => id, textChanges, { moved: isElsewhere }),
    ownConductors: things(before.ownConductors, after.ownConductors, ({ key }) => key, plainChanges),
    accepted: things(before.accepted, after.accepted, ({ key }) => key, plainChanges),
    settings: fieldChanges(before.settings, after.settings, { skip: NO_CHANGE }),
    ownRules: fieldChanges(before.ownRules ?? {}, after.ownRules ?? {}),
    other: fieldChanges(before, after, { skip: [...APART, ...COMPARED] }),
  }
}

const differIn = <T extends object>(key: keyof T, a: T, b: T): boolean =>
  fieldChanges({ [key]: a[key] }, { [key]: b[key] }).length > 0

const partChanges = (a: Part, b: Part): FieldChange[] => [
  ...fieldChanges(a, b, {
    skip: ['id', 'kind', 'x', 'y', 'at', 'turn', 'mirrored', 'values'],
    defaults: { notes: [] },
  }),
  ...valueChanges(a, b),
]

const conductorChanges = (a: Conductor, b: Conductor): FieldChange[] =>
  fieldChanges(laid(a, b), laid(b, a), { skip: ['id', 'path', 'pathIn'], defaults: { locked: false } })

/** Where either states what lies round it, the other is compared by what its sheath says. */
const laid = (c: Conductor, other: Conductor): Conductor =>
  c.surround === undefined && other.surround === undefined ? c : { ...c, surround: surroundOf(c) }

const zoneChanges = (a: Zone, b: Zone): FieldChange[] =>
  fieldChanges(inOrder(a), inOrder(b), { skip: ['id', 'x', 'y', 'w', 'h'] })

/** An outline goes round the same parts, in whatever order they were drawn in. */
const inOrder = (zone: Zone): Zone => ({ ...zone, parts: [...zone.parts].sort() })

const textChanges = (a: SheetText, b: SheetText): FieldChange[] =>
  fieldChanges(a, b, { skip: ['id', 'x', 'y'] })

const plainChanges = (a: object, b: object): FieldChange[] => fieldChanges(a, b, { skip: ['key'] })

const isElsewhere = (a: { x: number; y: number }, b: { x: number; y: number }): boolean =>
  a.x !== b.x || a.y !== b.y

interface Nature<T> {
  readonly moved?: (before: T, after: T) => boolean
  /** False: one was taken out, and another came in its place. */
  readonly alike?: (before: T, after: T) => boolean
}

function things<T>(
  before: readonly T[] = [],
  after: readonly T[] = [],
  idOf: (thing: T) => string,
  changesOf: (before: T, after: T) => readonly FieldChange[],
  { moved = () => false, alike = () => true }: Nature<T> = {},
): ItemChanges {
  const was = new Map(before.map((thing) => [idOf(thing), thing]))
  const is = new Map(after.map((thing) => [idOf(thing), thing]))
  const partner = (thing: T, among: ReadonlyMap<string, T>): T | undefined => {
    const other = among.get(idOf(thing))
    return other !== undefined && alike(other, thing) ? other : undefined
  }
  const pairs = after.flatMap((thing) => {
    const other = partner(thing, was)
    return other === undefined || other === thing ? [] : [[other, thing] as const]
  })
  return {
    added: after.filter((thing) => partner(thing, was) === undefined).map(idOf),
    removed: before.filter((thing) => partner(thing, is) === undefined).map(idOf),
    changed: pairs
      .map(([a, b]) => ({ id: idOf(b), fields: changesOf(a, b) }))
      .filter(({ fields }) => fields.length > 0),
    moved: pairs.filter(([a, b]) => moved(a, b)).map(([, b]) => idOf(b)),
  }
}
