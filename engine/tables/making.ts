import type { Metres, SquareMillimetres } from '../units'

/** How conductors are made up from stock. */
export interface Making {
  /** Added to the length drawn at each end, for stripping, dressing and a second try. */
  readonly allowanceM: Metres
  /** Lengths in which cable is bought, by section of copper; the last one has no limit of section. */
  readonly stock: readonly { readonly upToMm2: SquareMillimetres; readonly lengthM: Metres }[]
}

/** Common practice, no source: a hand's breadth at each end; thin cable on 30 m reels, thick cable in lengths of 10 m. */
export const USUAL_MAKING: Making = {
  allowanceM: 0.1,
  stock: [
    { upToMm2: 10, lengthM: 30 },
    { upToMm2: Number.POSITIVE_INFINITY, lengthM: 10 },
  ],
}

/** Length in which cable of a section is bought. Throws a RangeError where the list ends before it. */
export function stockLength({ stock }: Making, sectionMm2: SquareMillimetres): Metres {
  const found = stock.find((s) => sectionMm2 <= s.upToMm2)
  if (!found) throw new RangeError(`no stock length for ${sectionMm2} mm²`)
  return found.lengthM
}
