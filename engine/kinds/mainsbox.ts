import type { SymbolDrawing } from '../model/kind'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { line, rect } from './draw'

/** Parts of the mains boundary: drawn so that nobody takes them for extra-low voltage, and never sized. */

export const MAINS_W = 17.5
export const MAINS_H = 10

/** A double outline with leads in the ink of mains. */
export const mainsSymbol = (
  h: Millimetres,
  leads: readonly { readonly side: 'left' | 'right'; readonly y: Millimetres }[],
  marks: readonly Mark[],
): SymbolDrawing => ({
  w: MAINS_W,
  h,
  marks: [
    rect(2.5, 0.25, MAINS_W - 5, h - 0.5, { ink: 'mains', pen: 'strong' }),
    ...leads.map(({ side, y }) =>
      side === 'left'
        ? line([0, y, 2.5, y], { ink: 'mains', pen: 'strong' })
        : line([MAINS_W - 2.5, y, MAINS_W, y], { ink: 'mains', pen: 'strong' }),
    ),
    ...marks,
  ],
})
