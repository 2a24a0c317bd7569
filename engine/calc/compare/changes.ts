/** One fact that differs. Not there on one side: undefined. */
export interface FieldChange {
  /** ["name"], ["values", "ratingA"], ["values", "ways", 2, "ratingA"]; a row as a whole: ["values", "ways", 6]. */
  readonly path: readonly (string | number)[]
  readonly before: unknown
  readonly after: unknown
}

/** A thing that is on both sides, and not the same. */
export interface ItemChange {
  readonly id: string
  readonly fields: readonly FieldChange[]
}

/** What became of a list of things with permanent ids. Added ones are of the later state, removed ones of the earlier. */
export interface ItemChanges {
  readonly added: readonly string[]
  readonly removed: readonly string[]
  readonly changed: readonly ItemChange[]
  /** Drawn elsewhere, turned, mirrored, led another way; they may have changed too. */
  readonly moved: readonly string[]
}

/** Everything that differs between two states of a design. Plain data; ids, never words. */
export interface Comparison {
  readonly parts: ItemChanges
  readonly conductors: ItemChanges
  readonly zones: ItemChanges
  readonly texts: ItemChanges
  /** By key. */
  readonly ownConductors: ItemChanges
  /** By key of the finding. */
  readonly accepted: ItemChanges
  readonly settings: readonly FieldChange[]
  readonly ownRules: readonly FieldChange[]
  /** Parts of a design that have no words of their own here, by their key in the file. */
  readonly other: readonly FieldChange[]
}

export const ITEM_LISTS = ['parts', 'conductors', 'zones', 'texts', 'ownConductors', 'accepted'] as const
export type ItemList = (typeof ITEM_LISTS)[number]

export const FIELD_LISTS = ['settings', 'ownRules', 'other'] as const

/** Does nothing differ but where things are drawn? `strict`: not even that. */
export function isUnchanged(comparison: Comparison, strict = true): boolean {
  const quiet = ({ added, removed, changed, moved }: ItemChanges): boolean =>
    [added, removed, changed, strict ? moved : []].every((list) => list.length === 0)
  return (
    ITEM_LISTS.every((key) => quiet(comparison[key])) &&
    FIELD_LISTS.every((key) => comparison[key].length === 0)
  )
}
