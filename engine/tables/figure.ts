import type { SourceKey } from '../sources'

/** A number with where it comes from. `confirmed` is false where the figure itself could not be confirmed. */
export interface Figured {
  readonly value: number
  readonly source: SourceKey
  readonly confirmed: boolean
}

export const figured = (value: number, source: SourceKey): Figured => ({ value, source, confirmed: true })

export const unconfirmed = (value: number, source: SourceKey): Figured => ({
  value,
  source,
  confirmed: false,
})
