import {
  boxOf,
  type Clip,
  conductorById,
  copyOf,
  duplicateEdit,
  type EditOf,
  type Place,
  pasteEdit,
  removeEdit,
  sceneText,
  type XY,
} from '../../engine'
import { freeSpot } from './freespot'
import { usePointer } from './hand'
import { removeZone, zoneById } from './onsheet'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { seenDesign } from './seen'
import { clearSelection, select, useView } from './view'

/** What was copied last; it stays when another design is opened, so that parts can be carried across. */
let clip: Clip | null = null

const selection = () => {
  const { parts, conductors, texts, zone } = useView.getState()
  const within = zoneById(zone)?.parts ?? []
  return { parts: [...parts, ...within], conductors: [...conductors], texts: [...texts] }
}

interface Counted {
  readonly parts: readonly unknown[]
  readonly conductors: readonly unknown[]
  readonly texts?: readonly unknown[]
  readonly zones?: readonly unknown[]
}

const counted = ({ parts, conductors, texts = [], zones = [] }: Counted) => {
  const words = [
    parts.length && many(parts.length, 'part'),
    conductors.length && many(conductors.length, 'conductor'),
    zones.length && many(zones.length, 'outline'),
    texts.length && many(texts.length, 'text'),
  ].filter(Boolean)
  return words.length > 2 ? `${words.slice(0, -1).join(', ')} and ${words.at(-1)}` : words.join(' and ')
}

const many = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`

export function copy(): void {
  clip = copyOf(seenDesign(), selection())
  say(`Copied ${counted(clip)}.`)
}

export function cut(): void {
  copy()
  removeSelected()
}

/** Pastes at the pointer, else in the middle of what is in sight. */
export function pasteHere(): void {
  if (!clip || clip.parts.length + (clip.texts?.length ?? 0) === 0) {
    say('Nothing has been copied yet.')
    return
  }
  const [x, y] = usePointer.getState().at ?? useView.getState().middle
  add('Paste', pasteEdit(seenDesign(), clip, freeFor(clip, [x, y])))
}

export function duplicate(): void {
  const chosen = selection()
  if (chosen.parts.length + chosen.texts.length === 0) return
  const copied = copyOf(seenDesign(), chosen)
  const { x, y } = boxAround(copied)
  add('Duplicate', duplicateEdit(seenDesign(), chosen, freeFor(copied, [x + BESIDE, y + BESIDE])))
}

/** How far a copy is wished to be from what it was made of, mm. */
const BESIDE = 10

/** The place nearest to a wished top left corner at which what is added lies over no part. */
function freeFor(added: Clip, [x, y]: XY): Place {
  if (added.parts.length === 0) return { x, y }
  const { w, h } = boxAround(added)
  const [left, top] = freeSpot(seenDesign(), [x + w / 2, y + h / 2], w, h)
  return { x: left, y: top }
}

/** The box around what is copied. Its corner is that of what reaches furthest, as `pasteEdit` has it. */
function boxAround({ parts, texts = [] }: Clip) {
  const boxes = [...parts.map((p) => boxOf(p)), ...texts.map(sceneText)]
  const x = Math.min(...boxes.map((b) => b.x))
  const y = Math.min(...boxes.map((b) => b.y))
  return {
    x,
    y,
    w: Math.max(...boxes.map((b) => b.x + b.w)) - x,
    h: Math.max(...boxes.map((b) => b.y + b.h)) - y,
  }
}

function add(name: string, edit: EditOf<'add'>): void {
  if (!doEdit(`${name} ${counted(edit)}`, edit)) return
  select(
    edit.parts.map((p) => p.id),
    edit.conductors.map((c) => c.id),
    edit.texts?.map((t) => t.id),
  )
  say(`${name === 'Paste' ? 'Pasted' : 'Duplicated'} ${counted(edit)}.`)
}

export function removeSelected(): void {
  const { design } = useOpen.getState()
  const { zone } = useView.getState()
  if (zone !== null) {
    removeZone(zone)
    return
  }
  const chosen = selection()
  const edit = removeEdit(design, chosen)
  const one = edit.conductors.length === 1 && edit.parts.length === 0
  const { texts } = chosen
  const what =
    one && texts.length === 0
      ? (conductorById(design, edit.conductors[0]!)?.number ?? '')
      : counted({ ...edit, texts })
  if (doEdit(`Delete ${what}`, { do: 'all', edits: [edit, { do: 'untext', ids: texts }] })) {
    clearSelection()
    say(`Deleted ${what}.`)
  }
}
