import type { Design } from '../model/design'
import { partById } from '../model/lookup'
import { done, set, withParts } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Renames a part: designation, name or location. */
export function applyPart(design: Design, edit: EditOf<'part'>): EditResult {
  const part = partById(design, edit.part)
  if (!part) return refuse('no-part', `There is no part ${edit.part}.`)
  const { designation } = edit.set
  if (designation !== undefined && designation !== part.designation) {
    if (designation.trim() === '')
      return refuse('designation-empty', 'A part needs a designation, such as F1.')
    if (design.parts.some((p) => p.id !== part.id && p.designation === designation))
      return refuse('designation-taken', `${designation} already names another part.`)
  }
  return done(withParts(design, (p) => (p.id === part.id ? set(p, edit.set) : p)))
}
