import {
  type Clip,
  conductorById,
  copyOf,
  duplicateEdit,
  type EditOf,
  pasteEdit,
  removeEdit,
} from '../../engine'
import { doEdit, useOpen } from './open'
import { say } from './say'
import { clearSelection, select, useView } from './view'

/** What was copied last; it stays when another design is opened, so that parts can be carried across. */
let clip: Clip | null = null

const selection = () => {
  const { parts, conductors } = useView.getState()
  return { parts: [...parts], conductors: [...conductors] }
}

const counted = ({ parts, conductors }: { parts: readonly unknown[]; conductors: readonly unknown[] }) =>
  [parts.length && many(parts.length, 'part'), conductors.length && many(conductors.length, 'conductor')]
    .filter(Boolean)
    .join(' and ')

const many = (n: number, word: string) => `${n} ${word}${n === 1 ? '' : 's'}`

export function copy(): void {
  clip = copyOf(useOpen.getState().design, selection())
  say(`Copied ${counted(clip)}.`)
}

export function cut(): void {
  copy()
  removeSelected()
}

/** Pastes at the pointer, else in the middle of what is in sight. */
export function pasteHere(): void {
  if (!clip?.parts.length) {
    say('Nothing has been copied yet.')
    return
  }
  const { pointer, middle } = useView.getState()
  const [x, y] = pointer ?? middle
  add('Paste', pasteEdit(useOpen.getState().design, clip, { x, y }))
}

export function duplicate(): void {
  if (useView.getState().parts.size) add('Duplicate', duplicateEdit(useOpen.getState().design, selection()))
}

function add(name: string, edit: EditOf<'add'>): void {
  if (!doEdit(`${name} ${counted(edit)}`, edit)) return
  select(
    edit.parts.map((p) => p.id),
    edit.conductors.map((c) => c.id),
  )
  say(`${name === 'Paste' ? 'Pasted' : 'Duplicated'} ${counted(edit)}.`)
}

export function removeSelected(): void {
  const { design } = useOpen.getState()
  const edit = removeEdit(design, selection())
  const one = edit.conductors.length === 1 && edit.parts.length === 0
  const what = one ? (conductorById(design, edit.conductors[0]!)?.number ?? '') : counted(edit)
  if (doEdit(`Delete ${what}`, edit)) {
    clearSelection()
    say(`Deleted ${what}.`)
  }
}
