import type { ConductorId, PartId } from '../model/design'
import { above, type MaybeUnlimited } from '../units'

/** No answer is an answer of its own: a code, and the things to fill in or mend before the check can be made. */
export interface NotChecked {
  readonly notChecked: string
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
  /** A current that comes about whatever the missing figures are: what lies beyond its limit with it is so for certain. */
  readonly atLeastA?: MaybeUnlimited
}

export type Answer<T> = { readonly value: T } | NotChecked

/** The current of an answer, or what is known of it all the same; null: nothing. */
export const leastKnown = (answer: Answer<{ readonly amps: MaybeUnlimited }>): MaybeUnlimited | null =>
  'value' in answer ? answer.value.amps : (answer.atLeastA ?? null)

/** An answer that could not be given, with what is known of it. */
export const withAtLeast = (gap: NotChecked, amps: MaybeUnlimited | null): NotChecked =>
  amps === null || (gap.atLeastA !== undefined && !above(amps, gap.atLeastA))
    ? gap
    : { ...gap, atLeastA: amps }
