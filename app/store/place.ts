import {
  addPartEdit,
  boxOf,
  type ConductorId,
  conductorById,
  type Design,
  insertEdit,
  type Kind,
  type Part,
  partById,
  type XY,
} from '../../engine'
import { freeSpot } from './freespot'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { seenDesign } from './seen'
import { lookAt, select, useView } from './view'

/**
 * Where a part is wanted: its middle just there, mm, and into a conductor if it was let go on one; at the free place
 * nearest to one, or to what is in sight.
 */
export type Wanted = { readonly just: XY; readonly into?: ConductorId | null } | { readonly near: XY | null }

export function placePart(kind: Kind, at: Wanted): Part | null {
  const design = seenDesign()
  const middle = 'just' in at ? at.just : freeMiddle(kind, at.near ?? useView.getState().middle)
  const edit = addPartEdit(design, kind.key, { x: middle[0], y: middle[1] })
  const whole = 'just' in at && at.into ? conductorById(design, at.into) : undefined
  const insertion = whole ? insertEdit(useOpen.getState().design, edit, whole.id) : null
  if (!doEdit(`Place ${kind.title.toLowerCase()}`, insertion ?? edit)) return null
  const [part] = edit.parts
  if (!part) return null
  select([part.id])
  if (!('just' in at)) lookAt([part.id], [])
  say(
    whole && insertion
      ? `${part.designation}, ${kind.title}, fitted into ${whole.number}, which goes on as ${insertion.behind.number}. Give both pieces their length.`
      : `${part.designation}, ${kind.title}, placed${over(design, part)}.`,
  )
  return partById(useOpen.getState().design, part.id) ?? null
}

/** ", over E4": what it now lies on. */
function over({ parts }: Design, part: Part): string {
  const a = boxOf(part)
  const under = parts.filter((p) => {
    const b = boxOf(p)
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h
  })
  return under.length === 0 ? '' : `, over ${under.map((p) => p.designation).join(' and ')}`
}

function freeMiddle(kind: Kind, near: XY): XY {
  const design = seenDesign()
  const [part] = addPartEdit(design, kind.key, { x: 0, y: 0 }).parts
  const { w, h } = boxOf(part!)
  const [x, y] = freeSpot(design, near, w, h)
  return [x + w / 2, y + h / 2]
}
