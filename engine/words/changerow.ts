import type { ConductorId, PartId } from '../model/design'

export type ChangeKind = 'added' | 'removed' | 'changed' | 'moved'

export const CHANGE_GROUPS = {
  parts: 'Parts',
  conductors: 'Conductors',
  settings: 'Design',
  rules: 'Own rules and conductors',
  sheet: 'Outlines and texts',
  accepted: 'Accepted findings',
  currents: 'Worst-case currents',
  findings: 'Findings',
  moved: 'Drawn elsewhere, nothing else changed',
} as const
export type ChangeGroup = keyof typeof CHANGE_GROUPS

/** One thing that differs, in words. */
export interface ChangeRow {
  /** Unique in a comparison. */
  readonly key: string
  readonly group: ChangeGroup
  readonly what: ChangeKind
  /** "F3 Fridge fuse", "W12". */
  readonly name: string
  /** "Rating: 30 A → 40 A", one a fact. */
  readonly lines: readonly string[]
  /** Where it is on the drawing: of a removed thing, the drawing of before. */
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
  /** Ids of outlines and texts. */
  readonly onSheet: readonly string[]
}

/** A word for each; each has a mark of its own beside it, so that it needs no colour. */
export const CHANGE_WORDS: Readonly<Record<ChangeKind, string>> = {
  added: 'Added',
  removed: 'Removed',
  changed: 'Changed',
  moved: 'Moved',
}

export const CHANGE_MARKS: Readonly<Record<ChangeKind, string>> = {
  added: '+',
  removed: '−',
  changed: '≠',
  moved: '→',
}
