import type { SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import { line, text } from './draw'
import { fastened } from './fitting'
import { twoPoles } from './terminal'

/** The frame that sources share: both poles on the right, the drawing between the leads. */

const W = 15
const H = 12.5

/** Middle of the drawing of a source, and half its height. */
export const SUPPLY_X = 5
export const SUPPLY_Y = 6.25
export const SUPPLY_R = 3

export const supplyTerminals = (v: { readonly fitting: FittingKey }): readonly Terminal[] =>
  twoPoles('right', W, 2.5, 10, 'out', fastened(v.fitting))

export const supplySymbol = (marks: readonly Mark[]): SymbolDrawing => ({
  w: W,
  h: H,
  marks: [
    line([W, 2.5, SUPPLY_X, 2.5, SUPPLY_X, SUPPLY_Y - SUPPLY_R]),
    line([W, 10, SUPPLY_X, 10, SUPPLY_X, SUPPLY_Y + SUPPLY_R]),
    text(13.75, 2, '+', { anchor: 'middle' }),
    text(13.75, 9.5, '−', { anchor: 'middle' }),
    ...marks,
  ],
})
