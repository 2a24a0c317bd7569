import type { Design } from '../model/design'
import { partById } from '../model/lookup'
import { done, withParts } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Mirrors the symbol of each part in its own box, left to right. */
export function applyMirror(design: Design, edit: EditOf<'mirror'>): EditResult {
  const ids = new Set(edit.parts)
  for (const id of ids)
    if (!partById(design, id)) return refuse('no-part', `There is no part ${id} to mirror.`)
  return done(withParts(design, (p) => (ids.has(p.id) ? { ...p, mirrored: !p.mirrored } : p)))
}
