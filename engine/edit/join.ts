import type { Design } from '../model/design'
import { conductorById } from '../model/lookup'
import { canJoin } from './canjoin'
import { done } from './change'
import { conductorFault } from './conductorfault'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'

/** Adds one conductor. A second conductor between the same terminals is taken as meant: parallel conductors. */
export function applyJoin(design: Design, { conductor }: EditOf<'join'>): EditResult {
  if (conductorById(design, conductor.id))
    return refuse('id-taken', `The design already has a conductor with the id ${conductor.id}.`)
  const wrong =
    canJoin(design, conductor.from, conductor.to, { parallel: true }) ??
    conductorFault(design, conductor, conductor)
  return wrong ?? done({ ...design, conductors: [...design.conductors, conductor] })
}
