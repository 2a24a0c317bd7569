import { create } from 'zustand'
import {
  apply,
  type Design,
  type Edit,
  type History,
  historyOf,
  newDesign,
  push,
  redo as redoStep,
  undo as undoStep,
} from '../../engine'
import { refuse } from './say'
import { useView } from './view'

/**
 * How this tab holds the design: it may write; it may only look, as another tab holds it; that tab has let go, and this
 * one may take over; or nothing is loaded yet.
 */
export type Hold = 'loading' | 'writing' | 'reading' | 'free'

export interface OpenState {
  /** Always `history.design`: what is on the table. */
  readonly design: Design
  readonly history: History
  readonly hold: Hold
  /** Worth keeping before its first edit: it came from a file or a copy, not from a demo or an empty sheet. */
  readonly own: boolean
  /** The real file that it was opened from or saved to. */
  readonly file: { readonly name: string; readonly handle: FileSystemFileHandle | null } | null
}

const EMPTY = historyOf(newDesign(''))

export const useOpen = create<OpenState>(() => ({
  design: EMPTY.design,
  history: EMPTY,
  hold: 'loading',
  own: false,
  file: null,
}))

const get = useOpen.getState
const take = (history: History) => useOpen.setState({ history, design: history.design })

/**
 * Makes one named step that can be undone; steps in a row with the same merge key are one.
 * False: refused, and the person has been told why.
 */
export function doEdit(name: string, edit: Edit, mergeKey: string | null = null): boolean {
  const { history, hold } = get()
  if (useView.getState().trying) {
    refuse('The design is being tried out. Go back to the drawing (Esc) to change it.')
    return false
  }
  if (hold !== 'writing') {
    refuse(
      hold === 'free'
        ? 'This tab only looks at the design. The other one has let go of it: press "Change it here".'
        : 'This tab only looks at the design; another one has it open. Open a copy to change it.',
    )
    return false
  }
  const result = apply(history.design, edit)
  if (result.refused) {
    refuse(result.why)
    return false
  }
  take(push(history, result.design, name, mergeKey))
  return true
}

/** Takes an earlier state of the same design as one step that can be undone. */
export function takeState(name: string, design: Design): void {
  const { history, hold } = get()
  if (hold === 'writing' && design.id === history.design.id) take(push(history, design, name))
}

/** The name of the step that was undone; null: there was none. */
export function undo(): string | null {
  const name = nextUndo(get())
  if (name === null || get().hold !== 'writing' || useView.getState().trying) return null
  take(undoStep(get().history))
  return name
}

export function redo(): string | null {
  const name = nextRedo(get())
  if (name === null || get().hold !== 'writing' || useView.getState().trying) return null
  take(redoStep(get().history))
  return name
}

export const nextUndo = (s: OpenState): string | null => s.history.past.at(-1)?.name ?? null
export const nextRedo = (s: OpenState): string | null => s.history.future[0]?.name ?? null

/** Replaces the whole: another design is on the table, with no history behind it. */
export function lay(design: Design, hold: Hold, own = false, file: OpenState['file'] = null): void {
  useOpen.setState({ design, history: historyOf(design), hold, own, file })
}
