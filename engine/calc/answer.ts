import type { ConductorId, PartId } from '../model/design'

/** No answer is an answer of its own: a code, and the things to fill in or mend before the check can be made. */
export interface NotChecked {
  readonly notChecked: string
  readonly parts: readonly PartId[]
  readonly conductors: readonly ConductorId[]
}

export type Answer<T> = { readonly value: T } | NotChecked
