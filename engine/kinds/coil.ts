import type { PartBranch, PartDevice, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import type { Amps, Millimetres, Volts } from '../units'
import { figure } from './caption'
import { takes } from './device'
import { line, rect, text } from './draw'
import { number } from './field'
import { fastened, fittingField } from './fitting'
import { terminal } from './terminal'

/** The operating coil of relays: DIN 72552 terminals 86 (feed) and 85 (return). */

export const coilFields = {
  coilV: number('Coil voltage', 'V', 'Rated direct voltage of the coil, from its marking.', {
    required: true,
    standard: [6, 12, 24, 48],
    group: 'Coil',
  }),
  /** 0.15 A: a usual 12 V relay coil of some 80 Ω to 90 Ω. Common practice, no source. */
  coilA: number('Coil current', 'A', 'Current of the coil at the system voltage.', {
    initial: 0.15,
    group: 'Coil',
  }),
  coilFitting: fittingField('blade 6.3', 'Coil fastened by'),
}

/** "coil 12 V", for the caption of a relay. */
export const coilCaption = (v: { readonly coilV: Volts | null }): string =>
  v.coilV === null ? '' : `coil ${figure(v.coilV, 'V')}`

export const coilTerminals = (
  w: Millimetres,
  y: Millimetres,
  v: { readonly coilFitting: FittingKey },
): readonly Terminal[] => [
  terminal('left', 0, y, '86', 'coil, feed', 'positive', {
    mark: '86',
    use: 'in',
    ...fastened(v.coilFitting),
  }),
  terminal('right', w, y, '85', 'coil, return', 'negative', {
    mark: '85',
    use: 'out',
    ...fastened(v.coilFitting),
  }),
]

export const coilDevice = (coilA: Amps | null): PartDevice =>
  takes({ key: 'coil', positive: '86', negative: '85', name: 'coil' }, coilA)

/** A contact that the coil closes, or opens. */
export const byCoil = (closed: 'fed' | 'at-rest'): Pick<PartBranch, 'workedBy'> => ({
  workedBy: { by: 'coil', coil: 'coil', closed },
})

/** Coil across the box at height y with its marks, and the link from its upper edge to what it works. */
export const coilMarks = (
  w: Millimetres,
  y: Millimetres,
  link: (from: Millimetres) => Mark,
): readonly Mark[] => [
  line([0, y, w / 2 - 2.5, y]),
  rect(w / 2 - 2.5, y - 1.75, 5, 3.5),
  line([w / 2 + 2.5, y, w, y]),
  link(y - 1.75),
  text(0.4, y - 0.6, '86'),
  text(w - 0.4, y - 0.6, '85', { anchor: 'end' }),
]
