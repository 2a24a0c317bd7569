import type { Kilograms, Metres, SquareMillimetres } from '../units'

/** How conductors are made up from stock. */
export interface Making {
  /** Added to the length drawn at each end, for stripping, dressing and a second try. */
  readonly allowanceM: Metres
  /** Lengths in which cable is bought: up to THIN_MM2 of copper, and beyond. */
  readonly thinStockM: Metres
  readonly thickStockM: Metres
  /** What prices are in, as it is printed behind them; empty: not stated. */
  readonly currency: string
}

/** Largest section that comes on reels. */
export const THIN_MM2: SquareMillimetres = 10

/** Common practice, no source: a hand's breadth at each end; thin cable on 30 m reels, thick cable in lengths of 10 m. */
export const USUAL_MAKING: Making = { allowanceM: 0.1, thinStockM: 30, thickStockM: 10, currency: '' }

/** Bounds of each figure, m. */
export const MAKING_BOUNDS = {
  allowanceM: [0, 2],
  thinStockM: [1, 1000],
  thickStockM: [1, 1000],
} as const satisfies Readonly<Partial<Record<keyof Making, readonly [least: number, most: number]>>>

/** Length in which cable of a section is bought. */
export const stockLength = ({ thinStockM, thickStockM }: Making, sectionMm2: SquareMillimetres): Metres =>
  sectionMm2 <= THIN_MM2 ? thinStockM : thickStockM

/** What the workshop knows of something it buys: a row of the parts list or of the lugs. */
export interface Article {
  /** Key of the row: what it is and its ratings, so that it holds for the same thing in the next design too. */
  readonly key: string
  /** The workshop's own article number; empty: none. */
  readonly number: string
  /** Of one piece or one metre. null: not stated. */
  readonly price: number | null
  readonly weightKg: Kilograms | null
}

export const ARTICLE_BOUNDS = {
  price: [0, 1e6],
  weightKg: [0, 1000],
} as const satisfies Readonly<Partial<Record<keyof Article, readonly [least: number, most: number]>>>
