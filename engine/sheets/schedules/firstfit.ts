import type { Metres } from '../../units'

export interface Cut<T> {
  readonly item: T
  readonly lengthM: Metres
  /** Number of the stock length that it is cut from, from 1; null: longer than a stock length. */
  readonly from: number | null
}

export interface CuttingPlan<T> {
  /** Longest first. */
  readonly cuts: readonly Cut<T>[]
  /** What is left of each stock length that is begun, m. */
  readonly offcutsM: readonly Metres[]
}

/**
 * First-fit decreasing: each piece, the longest first, from the first stock length that still holds it. Never needs
 * more than 11/9 of the fewest stock lengths, and two thirds of one (Dósa 2007). Works in whole millimetres.
 * Pieces of one length keep their order. O(pieces × stock lengths).
 */
export function firstFit<T>(
  pieces: readonly { readonly item: T; readonly lengthM: Metres }[],
  stockM: Metres,
): CuttingPlan<T> {
  const stock = Math.round(stockM * 1000)
  const left: number[] = []
  const cuts = [...pieces]
    .sort((a, b) => b.lengthM - a.lengthM)
    .map(({ item, lengthM }): Cut<T> => {
      const length = Math.round(lengthM * 1000)
      if (length > stock) return { item, lengthM, from: null }
      let i = left.findIndex((room) => room >= length)
      if (i < 0) i = left.push(stock) - 1
      left[i] = left[i]! - length
      return { item, lengthM, from: i + 1 }
    })
  return { cuts, offcutsM: left.map((mm) => mm / 1000) }
}
