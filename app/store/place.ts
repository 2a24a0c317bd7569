import { boxOf, initialValues, type Kind, nextDesignation, nextId, type Part, type XY } from '../../engine'
import { freeSpot } from './freespot'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { lookAt, select, useView } from './view'

/** Puts a new part on the sheet. `at`: middle of its symbol, mm; null: the free place nearest to what is in sight. */
export function placePart(kind: Kind, at: XY | null): Part | null {
  const { design } = useOpen.getState()
  const part: Part = {
    id: nextId(design, 'p'),
    kind: kind.key,
    designation: nextDesignation(design, kind.letter),
    name: '',
    location: '',
    x: 0,
    y: 0,
    turn: 0,
    mirrored: false,
    values: initialValues(kind.fields),
  }
  const { w, h } = boxOf(part)
  const [x, y] = at
    ? [onGrid(at[0] - w / 2), onGrid(at[1] - h / 2)]
    : freeSpot(design, useView.getState().middle, w, h)
  const placed = { ...part, x, y }
  if (!doEdit(`Place ${kind.title.toLowerCase()}`, { do: 'add', parts: [placed], conductors: [] }))
    return null
  select([placed.id])
  if (!at) lookAt([placed.id], [])
  say(`${placed.designation}, ${kind.title}, placed.`)
  return placed
}

const onGrid = (mm: number) => Math.round(mm / 2.5) * 2.5
