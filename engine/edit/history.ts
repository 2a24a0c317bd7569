import type { Design } from '../model/design'

/** A design as it was, with the name of the step that came after it, in the words of a menu: "Move F1". */
export interface Step {
  readonly design: Design
  readonly name: string
  /** Steps that follow one another with the same key are one: a drag, typing into one field. null: never merged. */
  readonly mergeKey: string | null
}

/** Undo and redo of whole designs. Designs share what did not change, so a step costs little. */
export interface History {
  readonly design: Design
  /** Oldest first. `past.at(-1)` is what undo goes back to. */
  readonly past: readonly Step[]
  /** Next first: `future[0]` is what redo goes on to. */
  readonly future: readonly Step[]
}

/** Steps kept; the oldest fall away. */
const MOST = 500

export const historyOf = (design: Design): History => ({ design, past: [], future: [] })

/**
 * Makes a design the present one, as a named step. The same design again is no step. A step with the merge key of
 * the one before it is taken into that; undo, redo and `settle` end the merging.
 */
export function push(
  history: History,
  design: Design,
  name: string,
  mergeKey: string | null = null,
): History {
  if (design === history.design) return history
  const last = history.past.at(-1)
  if (mergeKey !== null && last?.mergeKey === mergeKey && history.future.length === 0)
    return { design, past: history.past, future: [] }
  const past = [...history.past, { design: history.design, name, mergeKey }]
  return { design, past: past.length > MOST ? past.slice(-MOST) : past, future: [] }
}

/** Ends a drag: what follows is a step of its own even with the same merge key. */
export function settle(history: History): History {
  const last = history.past.at(-1)
  if (!last || last.mergeKey === null) return history
  return { ...history, past: [...history.past.slice(0, -1), { ...last, mergeKey: null }] }
}

/** Back by one step; the same history when there is none. */
export function undo(history: History): History {
  const last = history.past.at(-1)
  if (!last) return history
  return {
    design: last.design,
    past: history.past.slice(0, -1),
    future: [{ design: history.design, name: last.name, mergeKey: null }, ...history.future],
  }
}

/** Forward by one step; the same history when there is none. */
export function redo(history: History): History {
  const [next, ...future] = history.future
  if (!next) return history
  return {
    design: next.design,
    past: [...history.past, { design: history.design, name: next.name, mergeKey: null }],
    future,
  }
}
