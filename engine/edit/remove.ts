import type { ConductorId, Design, PartId } from '../model/design'
import { conductorById, partById } from '../model/lookup'
import { acceptedWithout } from './accept'
import { done, set, withConductors } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/**
 * Removes parts with every conductor that ends at them, and conductors. A return whose feed goes stays, as a
 * conductor of its own.
 */
export function applyRemove(design: Design, edit: EditOf<'remove'>): EditResult {
  const parts = new Set<PartId>(edit.parts)
  for (const id of parts)
    if (!partById(design, id)) return refuse('no-part', `There is no part ${id} to remove.`)
  const gone = new Set<ConductorId>(edit.conductors)
  for (const id of gone)
    if (!conductorById(design, id)) return refuse('no-conductor', `There is no conductor ${id} to remove.`)
  for (const c of design.conductors) if (parts.has(c.from.part) || parts.has(c.to.part)) gone.add(c.id)

  const left = {
    ...design,
    parts: parts.size === 0 ? design.parts : design.parts.filter((p) => !parts.has(p.id)),
    conductors: gone.size === 0 ? design.conductors : design.conductors.filter((c) => !gone.has(c.id)),
  }
  if (left.parts === design.parts && left.conductors === design.conductors) return done(design)
  return done(
    withConductors(acceptedWithout(left, new Set([...parts, ...gone])), (c) =>
      c.returnOf !== null && gone.has(c.returnOf) ? set(c, { returnOf: null }) : c,
    ),
  )
}
