import type { Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { done, set, withConductors } from './change'
import { conductorFault } from './conductorfault'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Sets the same data on one or several conductors. A number belongs to one conductor only. */
export function applyConductor(design: Design, edit: EditOf<'conductor'>): EditResult {
  const ids = new Set(edit.conductors)
  if (edit.set.number !== undefined && ids.size > 1)
    return refuse('number-taken', 'Several conductors cannot carry the same number.')
  for (const id of ids) {
    const conductor = conductorById(design, id)
    if (!conductor) return refuse('no-conductor', `There is no conductor ${id}.`)
    const fault = conductorFault(design, conductor, edit.set)
    if (fault) return fault
  }
  return done(withConductors(design, (c) => (ids.has(c.id) ? set(c, edit.set) : c)))
}
