/** Options of one choice, cheapest first: the dearer, the less it uses. */
export interface Options {
  readonly cost: readonly number[]
  readonly use: readonly number[]
}

/** One option of each choice, so that no limit is exceeded, at least cost. Costs and uses ≥ 0. */
export interface Choosing {
  readonly choices: readonly Options[]
  readonly limits: readonly Limit[]
}

/** Σ factor · use over the choices named ≤ most. */
export interface Limit {
  readonly most: number
  readonly choices: readonly number[]
  /** Above 0, one a choice. */
  readonly factors: readonly number[]
}
