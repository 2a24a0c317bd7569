import type { ValuesOf } from '../model/fields'
import type { Electrical, ElectricalContext, SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { Amps } from '../units'
import { captions, known } from './caption'
import { takes } from './device'
import { line, text } from './draw'
import { choice, flag, number, result } from './field'
import { twoPoles } from './terminal'

/** What the kinds of load share: fields, terminals, electrical model, captions, and the two leads of the symbol. */

/** Usual figures of a kind of load, offered until typed over. Common practice, no source. */
interface Usual {
  readonly nature?: 'current' | 'power' | 'resistance'
  readonly inrush?: number
  readonly inrushS?: number
  readonly continuous?: boolean
  readonly hours?: number | null
}

export const loadFields = (usual: Usual = {}) => ({
  currentA: number(
    'Running current',
    'A',
    'Current while it runs. Give this or the power; the current counts.',
  ),
  powerW: number('Power', 'W', 'Rated power at the nominal system voltage, where the current is not stated.'),
  nature: choice(
    'Behaves as',
    'How its current changes with voltage: electronics draw more as the voltage falls, heaters draw less.',
    { current: 'Constant current', power: 'Constant power', resistance: 'Resistance' },
    usual.nature ?? 'current',
  ),
  inrush: number('Inrush', '×', 'Starting current as a multiple of the running current; 1: none.', {
    initial: usual.inrush ?? 1,
    min: 1,
    group: 'Starting',
  }),
  inrushS: number('Inrush lasts', 's', 'How long the starting current lasts.', {
    initial: usual.inrushS ?? 0,
    group: 'Starting',
  }),
  service: choice(
    'Service',
    'Critical circuits are held to a smaller voltage drop.',
    { general: 'General', critical: 'Critical' },
    'general',
    { group: 'Use' },
  ),
  continuous: flag('Continuous', 'May run for three hours or more at a time.', {
    initial: usual.continuous ?? true,
    group: 'Use',
  }),
  hours: number('Hours a day', 'h', 'Hours of running in a day, for the energy balance.', {
    initial: usual.hours ?? null,
    max: 24,
    group: 'Use',
  }),
  worstA: result('Worst running current', 'A', 'Largest running current over the voltages of the system.'),
})
type LoadValues = ValuesOf<ReturnType<typeof loadFields>>

/**
 * Largest running current, A; null where neither current nor power is stated. Constant power is dearest at the
 * lowest voltage, a resistance at the highest.
 */
function runningAmps(
  v: Pick<LoadValues, 'currentA' | 'powerW' | 'nature'>,
  c: ElectricalContext,
): Amps | null {
  const nominal = v.currentA ?? (v.powerW === null ? null : v.powerW / c.systemV)
  if (nominal === null || v.nature === 'current') return nominal
  return v.nature === 'power' ? nominal * (c.systemV / c.lowestV) : nominal * (c.highestV / c.systemV)
}

/** One device from its running current; null: not known. */
export const loadModel = (amps: Amps | null): Electrical => ({
  merges: [],
  branches: [],
  devices: [takes({ key: 'load', positive: '+', negative: '-' }, amps)],
})

const LOAD_W = 15
const LOAD_H = 12.5

/** Middle of the drawing of a load, and half its height: the leads reach it from above and below. */
export const LOAD_X = 10
export const LOAD_Y = 6.25
export const LOAD_R = 3

export const loadTerminals = (): readonly Terminal[] => twoPoles('left', 0, 2.5, 10, 'in')

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
  electrical: (v: LoadValues, c: ElectricalContext) => loadModel(runningAmps(v, c)),
  results: (v: LoadValues, c: ElectricalContext) => ({ worstA: runningAmps(v, c) }),
  symbol: () => loadSymbol(marks),
  caption: loadCaption,
})
