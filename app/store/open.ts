import { create } from 'zustand'
import { apply, type Design, type Edit, newDesign } from '../../engine'
import { refuse } from './say'

/** How this tab holds the design: it may write, it may only look, or nothing is loaded yet. */
export type Hold = 'loading' | 'writing' | 'reading'

/** A design as it was, and the name of the edit that led away from it (past) or to it (future). */
interface Step {
  readonly name: string
  readonly design: Design
}

export interface OpenState {
  readonly design: Design
  readonly past: readonly Step[]
  readonly future: readonly Step[]
  readonly hold: Hold
  /** The real file that it was opened from or saved to. */
  readonly file: { readonly name: string; readonly handle: FileSystemFileHandle | null } | null
}

export const useOpen = create<OpenState>(() => ({
  design: newDesign(''),
  past: [],
  future: [],
  hold: 'loading',
  file: null,
}))

const get = useOpen.getState
const set = useOpen.setState

/** Makes one named, undoable step. False: refused, and the person has been told why. */
export function doEdit(name: string, edit: Edit): boolean {
  const { design, past, hold } = get()
  if (hold !== 'writing') {
    refuse('This tab only looks at the design; another one has it open. Open a copy to change it.')
    return false
  }
  const result = apply(design, edit)
  if (result.refused) {
    refuse(result.why)
    return false
  }
  if (result.design === design) return true
  set({ design: result.design, past: [...past, { name, design }], future: [] })
  return true
}

export function undo(): string | null {
  const { design, past, future, hold } = get()
  const step = past.at(-1)
  if (!step || hold !== 'writing') return null
  set({ design: step.design, past: past.slice(0, -1), future: [{ name: step.name, design }, ...future] })
  return step.name
}

export function redo(): string | null {
  const { design, past, future, hold } = get()
  const step = future[0]
  if (!step || hold !== 'writing') return null
  set({ design: step.design, past: [...past, { name: step.name, design }], future: future.slice(1) })
  return step.name
}

export const nextUndo = (s: OpenState): string | null => s.past.at(-1)?.name ?? null
export const nextRedo = (s: OpenState): string | null => s.future[0]?.name ?? null

/** Replaces the whole: another design is on the table, with no history behind it. */
export function lay(design: Design, hold: Hold, file: OpenState['file'] = null): void {
  set({ design, past: [], future: [], hold, file })
}
