import type { Built, BuiltEnd, BuiltWhat } from '../model/bench'
import { isLater } from '../model/benchmerge'
import type { Conductor, ConductorId, Design } from '../model/design'
import { conductorById, partById } from '../model/lookup'
import { recordOf } from './benchrecord'
import { hasTerminal } from './terminal'

/** What counts of one fact about a conductor, and what other devices have said otherwise without knowing of it. */
export interface BuiltNow {
  readonly fact: Built
  readonly others: readonly Built[]
}

/** Facts recorded of a conductor as built, the latest word on each. */
export function builtFacts(design: Design, id: ConductorId): readonly BuiltNow[] {
  const words = new Map<BuiltWhat, Built[]>()
  for (const word of recordOf(design, id)?.built ?? []) {
    const known = words.get(word.what)
    if (known) known.push(word)
    else words.set(word.what, [word])
  }
  return [...words.values()].map((all) => {
    const fact = all.reduce((a, b) => (isLater(b, a) ? b : a))
    const unlike = (w: Built) =>
      !sameValue(w.value, fact.value) && !(fact.knew !== undefined && w.at <= fact.knew)
    return { fact, others: all.filter((w) => w !== fact && unlike(w)) }
  })
}

/** Something that was built otherwise than it is drawn. */
export interface Difference extends BuiltNow {
  readonly conductor: ConductorId
  readonly what: Exclude<BuiltWhat, 'note'>
  readonly drawn: Built['value']
  readonly built: NonNullable<Built['value']>
  /** False: the terminal is not in the drawing any more, so that nothing can be worked out with it. */
  readonly stands: boolean
}

/** Everything that was built otherwise than drawn, in the order of the drawing. O(records). */
export const differencesOf = (design: Design): readonly Difference[] =>
  design.bench ? design.conductors.flatMap((c) => differencesAt(design, c)) : []

export function differencesAt(design: Design, c: Conductor): readonly Difference[] {
  return builtFacts(design, c.id).flatMap(({ fact, others }) => {
    const { what, value } = fact
    if (what === 'note' || value === null || sameValue(value, c[what])) return []
    const stands = what === 'size' || what === 'lengthM' || isTerminal(design, value as BuiltEnd)
    return [{ conductor: c.id, what, drawn: c[what], built: value, stands, fact, others }]
  })
}

/** A fact of which devices have said different things, none of them knowing of the others. */
export interface Unsettled extends BuiltNow {
  readonly conductor: ConductorId
}

/** What is still to be settled, in the order of the drawing. O(records). */
export const unsettledOf = (design: Design): readonly Unsettled[] =>
  design.bench
    ? design.conductors.flatMap(({ id }) =>
        builtFacts(design, id).flatMap((f) => (f.others.length > 0 ? [{ ...f, conductor: id }] : [])),
      )
    : []

/** What the workshop wrote beside a conductor; null: nothing. */
export function builtNote(design: Design, id: ConductorId): string | null {
  const note = builtFacts(design, id).find((f) => f.fact.what === 'note')
  return (note?.fact.value as string | null | undefined) ?? null
}

/**
 * The design as it was built: what was recorded as built otherwise stands in place of what is drawn, and nothing else
 * is recorded. The same design where nothing was built otherwise.
 */
export function asBuilt(design: Design): Design {
  const differences = differencesOf(design).filter((d) => d.stands)
  if (differences.length === 0) return design
  const byId = new Map<ConductorId, Difference[]>()
  for (const d of differences) byId.set(d.conductor, [...(byId.get(d.conductor) ?? []), d])
  const { bench: _bench, ...rest } = design
  return {
    ...rest,
    conductors: design.conductors.map((c) => withBuilt(c, byId.get(c.id) ?? [])),
  }
}

/** One conductor as it was built. */
export const conductorAsBuilt = (design: Design, c: Conductor): Conductor =>
  withBuilt(
    c,
    differencesAt(design, c).filter((d) => d.stands),
  )

/** Corners dragged by hand are let go where an end is elsewhere. */
function withBuilt(c: Conductor, differences: readonly Difference[]): Conductor {
  if (differences.length === 0) return c
  const moved = differences.some((d) => d.what === 'from' || d.what === 'to')
  const facts = Object.fromEntries(differences.map((d) => [d.what, d.built]))
  return { ...c, ...facts, ...(moved ? { path: [] } : {}) }
}

const isTerminal = (design: Design, end: BuiltEnd): boolean => {
  const part = partById(design, end.part)
  return part !== undefined && hasTerminal(part, end.terminal)
}

/** What can be recorded: a size, a length, words, a terminal, or nothing. */
export type Recorded = Built['value'] | undefined

/** Of values of the same fact. */
export function sameValue(a: Recorded, b: Recorded): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b
  return a.part === b.part && a.terminal === b.terminal
}

/** True where a conductor of the drawing has a difference. */
export const isBuiltOtherwise = (design: Design, id: ConductorId): boolean => {
  const c = conductorById(design, id)
  return c !== undefined && differencesAt(design, c).length > 0
}
