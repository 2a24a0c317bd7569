import type { Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { canReconnect } from './canjoin'
import { done, withConductors } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Takes one end of a conductor to another terminal. Corners dragged by hand are let go; everything else stays. */
export function applyReconnect(design: Design, edit: EditOf<'reconnect'>): EditResult {
  const conductor = conductorById(design, edit.conductor)
  if (!conductor) return refuse('no-conductor', `There is no conductor ${edit.conductor}.`)
  const now = conductor[edit.end]
  if (now.part === edit.to.part && now.terminal === edit.to.terminal) return done(design)
  const refusal = canReconnect(design, conductor.id, edit.end, edit.to)
  if (refusal) return refusal
  return done(
    withConductors(design, (c) => (c.id === conductor.id ? { ...c, [edit.end]: edit.to, path: [] } : c)),
  )
}
