/**
 * How a conductor looks through a lens. Each look differs from the others of its lens in width or in pattern, so that
 * it can be told without colour.
 */
export interface Look {
  /** What it means, for the key on the sheet. */
  readonly words: string
  readonly widthMm: number
  /** Dash pattern, mm; null: one unbroken line. */
  readonly dash: readonly number[] | null
  readonly ink: 'ink' | 'faint' | 'accent' | 'danger'
  /** A line of paper along its middle, mm wide: a hollow line. 0: none. */
  readonly coreMm: number
}

/** A conductor painted: its look, the figure on it, and how much the figure matters where there is not room for all. */
export interface Painted {
  readonly look: Look
  readonly figure: string | null
  readonly rank: number
}

export const look = (words: string, widthMm: number, more: Partial<Look> = {}): Look => ({
  words,
  widthMm,
  dash: null,
  ink: 'ink',
  coreMm: 0,
  ...more,
})

/** A conductor that a lens has nothing to say about: data links, sense leads, mains. */
export const ASIDE = look('Carries no current of this network', 0.25, { ink: 'faint' })
export const NOT_CHECKED = look('Not checked', 0.8, { dash: [0.3, 1.3] })

export const plain = (of: Look): Painted => ({ look: of, figure: null, rank: 0 })
