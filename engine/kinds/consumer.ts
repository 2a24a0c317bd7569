import type { Electrical, ElectricalContext, PartDevice, SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import type { Amps } from '../units'
import { captions, known } from './caption'
import { takes } from './device'
import { line, text } from './draw'
import { fastened } from './fitting'
import { fullUse, type LoadValues, runningAmps } from './loadfields'
import { twoPoles } from './terminal'

/** What the kinds of load share: terminals, electrical model, captions, and the two leads of the symbol. */

/** One device from its running current; null: not known. */
export const loadModel = (amps: Amps | null, more: Pick<PartDevice, 'atFullUse'> = {}): Electrical => ({
  merges: [],
  branches: [],
  devices: [takes({ key: 'load', positive: '+', negative: '-', ...more }, amps)],
})

const LOAD_W = 15
const LOAD_H = 12.5

/** Middle of the drawing of a load, and half its height: the leads reach it from above and below. */
export const LOAD_X = 10
export const LOAD_Y = 6.25
export const LOAD_R = 3

export const loadTerminals = (v: { readonly fitting: FittingKey }): readonly Terminal[] =>
  twoPoles('left', 0, 2.5, 10, 'in', fastened(v.fitting))

/** The leads and signs, with the drawing of the load between them. */
export const loadSymbol = (marks: readonly Mark[]): SymbolDrawing => ({
  w: LOAD_W,
  h: LOAD_H,
  marks: [
    line([0, 2.5, LOAD_X, 2.5, LOAD_X, LOAD_Y - LOAD_R]),
    line([0, 10, LOAD_X, 10, LOAD_X, LOAD_Y + LOAD_R]),
    text(1.25, 2, '+', { anchor: 'middle' }),
    text(1.25, 9.5, '−', { anchor: 'middle' }),
    ...marks,
  ],
})

/** "5 A", "60 W", or "? A" where neither is known. */
const loadCaption = (v: Pick<LoadValues, 'currentA' | 'powerW'>): readonly string[] =>
  captions(known(v.currentA, 'A') || known(v.powerW, 'W') || '? A')

/** Everything of a plain load but its name and its drawing. */
export const loadParts = (marks: readonly Mark[]) => ({
  group: 'loads' as const,
  terminals: loadTerminals,
  electrical: (v: LoadValues, c: ElectricalContext) => loadModel(runningAmps(v, c), fullUse(v, c)),
  results: (v: LoadValues, c: ElectricalContext) => ({ worstA: runningAmps(v, c) }),
  symbol: () => loadSymbol(marks),
  caption: loadCaption,
})
