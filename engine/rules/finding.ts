import type { Edit } from '../edit/edit'
import type { ConductorId, PartId } from '../model/design'
import type { Unit } from '../model/fields'
import type { Level } from '../model/level'

export type { Level } from '../model/level'

export interface Figure {
  readonly value: number | 'unlimited'
  readonly unit: Unit
}

/**
 * What a rule returns: facts only. The sentence for a practitioner is written in words/, from `rule`, `level`
 * and `facts`, for screen and paper alike.
 */
export interface Finding {
  /** Stable while the fault stands: rule id and subjects. */
  readonly key: string
  /** Permanent id, e.g. "P1". Never reused. */
  readonly rule: string
  readonly level: Level
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
  readonly actual?: Figure
  readonly limit?: Figure
  /** Key in sources.ts of the figure or practice behind the rule. */
  readonly source: string
  /** Everything the sentence needs: plain numbers, strings, ids. */
  readonly facts: Readonly<Record<string, number | string | boolean | readonly string[]>>
  /** Where it is certain: an edit that mends it, and what it does in a few words. */
  readonly fix?: { readonly title: string; readonly edit: Edit }
}
