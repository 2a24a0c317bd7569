import { addPartEdit, boxOf, type Kind, type Part, partById, type XY } from '../../engine'
import { freeSpot } from './freespot'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { lookAt, select, useView } from './view'

/** Puts a new part on the sheet. `at`: middle of its symbol, mm; null: the free place nearest to what is in sight. */
export function placePart(kind: Kind, at: XY | null): Part | null {
  const { design } = useOpen.getState()
  const middle = at ?? freeMiddle(kind)
  const edit = addPartEdit(design, kind.key, { x: middle[0], y: middle[1] })
  if (!doEdit(`Place ${kind.title.toLowerCase()}`, edit)) return null
  const [part] = edit.parts
  if (!part) return null
  select([part.id])
  if (!at) lookAt([part.id], [])
  say(`${part.designation}, ${kind.title}, placed.`)
  return partById(useOpen.getState().design, part.id) ?? null
}

function freeMiddle(kind: Kind): XY {
  const { design } = useOpen.getState()
  const [part] = addPartEdit(design, kind.key, { x: 0, y: 0 }).parts
  const { w, h } = boxOf(part!)
  const [x, y] = freeSpot(design, useView.getState().middle, w, h)
  return [x + w / 2, y + h / 2]
}
