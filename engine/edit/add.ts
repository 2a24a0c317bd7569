import type { Conductor, Design, Part, PartId } from '../model/design'
import { done } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { ownFault } from './ownconductors'
import { refuse } from './refuse'
import { hasTerminal } from './terminal'

/** Adds parts, the conductors among them and what is there already, outlines, and texts on the sheet. Ids, designations and numbers must be free. */
export function applyAdd(design: Design, edit: EditOf<'add'>): EditResult {
  const { texts = [], zones = [], ownConductors = [] } = edit
  if ([edit.parts, edit.conductors, texts, zones].every((list) => list.length === 0)) return done(design)
  const parts = [...design.parts, ...edit.parts]
  const conductors = [...design.conductors, ...edit.conductors]
  const wrong =
    taken(parts, conductors) ?? loose(parts, edit.conductors) ?? strayReturn(conductors, edit.conductors)
  if (wrong) return wrong
  const allTexts = [...(design.texts ?? []), ...texts]
  const allZones = [...(design.zones ?? []), ...zones]
  const text = twice(allTexts.map((t) => t.id))
  if (text !== null) return refuse('id-taken', `The sheet already has a text with the id ${text}.`)
  const zone = twice(allZones.map((z) => z.id))
  if (zone !== null) return refuse('id-taken', `The sheet already has an outline with the id ${zone}.`)
  const allOwn = [...(design.ownConductors ?? []), ...ownConductors]
  const own = ownFault(allOwn)
  if (own) return own
  return done({
    ...design,
    parts,
    conductors,
    ...(texts.length > 0 ? { texts: allTexts } : {}),
    ...(zones.length > 0 ? { zones: allZones } : {}),
    ...(ownConductors.length > 0 ? { ownConductors: allOwn } : {}),
  })
}

function taken(parts: readonly Part[], conductors: readonly Conductor[]): Refusal | null {
  const id = twice(parts.map((p) => p.id)) ?? twice(conductors.map((c) => c.id))
  if (id !== null) return refuse('id-taken', `The design already has something with the id ${id}.`)
  const designation = twice(parts.map((p) => p.designation))
  if (designation !== null) return refuse('designation-taken', `${designation} already names another part.`)
  const number = twice(conductors.map((c) => c.number))
  if (number !== null) return refuse('number-taken', `${number} already numbers another conductor.`)
  return null
}

function twice(names: readonly string[]): string | null {
  const seen = new Set<string>()
  for (const name of names) {
    if (seen.has(name)) return name
    seen.add(name)
  }
  return null
}

function loose(parts: readonly Part[], added: readonly Conductor[]): Refusal | null {
  const byId = new Map<PartId, Part>(parts.map((p) => [p.id, p]))
  for (const c of added)
    for (const end of [c.from, c.to]) {
      const part = byId.get(end.part)
      if (!part) return refuse('no-part', `${c.number} ends at a part that is not in the design.`)
      if (!hasTerminal(part, end.terminal))
        return refuse('no-terminal', `${part.designation} has no terminal "${end.terminal}" for ${c.number}.`)
    }
  return null
}

function strayReturn(all: readonly Conductor[], added: readonly Conductor[]): Refusal | null {
  const ids = new Set(all.map((c) => c.id))
  const stray = added.find((c) => c.returnOf !== null && (c.returnOf === c.id || !ids.has(c.returnOf)))
  return stray
    ? refuse('no-feed', `${stray.number} is the return of a conductor that is not in the design.`)
    : null
}
