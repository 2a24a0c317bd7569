import {
  type Clip,
  conductorById,
  copyOf,
  duplicateEdit,
  type EditOf,
  pasteEdit,
  removeEdit,
} from '../../engine'
import { usePointer } from './hand'
import { removeZone } from './onsheet'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { seenDesign } from './seen'
import { clearSelection, select, useView } from './view'

/** What was copied last; it stays when another design is opened, so that parts can be carried across. */
let clip: Clip | null = null

const selection = () => {
  const { parts, conductors, texts } = useView.getState()
  return { parts: [...parts], conductors: [...conductors], texts: [...texts] }
}

interface Counted {
  readonly parts: readonly unknown[]
  readonly conductors: readonly unknown[]
  readonly texts?: readonly unknown[]
}

const counted = ({ parts, conductors, texts = [] }: Counted) => {
  const words = [
    parts.length && many(parts.length, 'part'),
    conductors.length && many(conductors.length, 'conductor'),
    texts.length && many(texts.length, 'text'),
  ].filter(Boolean)
  return words.length > 2 ? `${words[0]}, ${words[1]} and ${words[2]}` : words.join(' and ')
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
  add('Paste', pasteEdit(seenDesign(), clip, { x, y }))
}

export function duplicate(): void {
  const { parts, texts } = useView.getState()
  if (parts.size + texts.size > 0) add('Duplicate', duplicateEdit(seenDesign(), selection()))
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
