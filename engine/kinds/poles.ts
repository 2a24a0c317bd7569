import type { Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import { CONVERTER_H, CONVERTER_W, LOWER_Y, UPPER_Y } from './converter'
import { line, text } from './draw'
import { fastened } from './fitting'
import { terminal } from './terminal'

/** Terminals of a converter box: two poles on a side, or one negative for both sides at the bottom. */

export const poles = (
  side: 'left' | 'right',
  prefix: string,
  name: string,
  form: FittingKey,
): readonly Terminal[] => {
  const x = side === 'left' ? 0 : CONVERTER_W
  const use = side === 'left' ? (['in', 'out'] as const) : (['out', 'in'] as const)
  const label = name === '' ? '' : `${name}, `
  return [
    terminal(side, x, UPPER_Y, `${prefix}+`, `${label}positive`, 'positive', {
      mark: '+',
      use: use[0],
      ...fastened(form),
    }),
    terminal(side, x, LOWER_Y, `${prefix}-`, `${label}negative`, 'negative', {
      mark: '−',
      use: use[1],
      ...fastened(form),
    }),
  ]
}

export const sharedNegative = (form: FittingKey): Terminal =>
  terminal('down', CONVERTER_W / 2, CONVERTER_H, '-', 'negative, shared', 'negative', {
    mark: '−',
    use: 'out',
    ...fastened(form),
  })

/** Leads and signs of the two poles on a side; `negative` false where the negative is shared. */
export const poleMarks = (side: 'left' | 'right', negative = true): readonly Mark[] => {
  const [edge, box, sign] =
    side === 'left' ? [0, 2.5, 1.25] : [CONVERTER_W, CONVERTER_W - 2.5, CONVERTER_W - 1.25]
  return [
    line([edge, UPPER_Y, box, UPPER_Y]),
    text(sign, UPPER_Y - 0.5, '+', { anchor: 'middle' }),
    ...(negative
      ? [line([edge, LOWER_Y, box, LOWER_Y]), text(sign, LOWER_Y - 0.5, '−', { anchor: 'middle' })]
      : []),
  ]
}

export const sharedNegativeMarks = (): readonly Mark[] => [
  line([CONVERTER_W / 2, CONVERTER_H - 2.5, CONVERTER_W / 2, CONVERTER_H]),
  text(CONVERTER_W / 2 + 1.5, CONVERTER_H - 0.4, '−', { anchor: 'middle' }),
]

/** One mains terminal, drawn in the ink of mains. */
export const mainsTerminal = (side: 'left' | 'right', key: string, name: string, y: number): Terminal =>
  terminal(side, side === 'left' ? 0 : CONVERTER_W, y, key, name, 'mains', {
    mark: '~',
    use: side === 'left' ? 'in' : 'out',
  })

export const mainsLead = (side: 'left' | 'right', y: number): Mark =>
  side === 'left'
    ? line([0, y, 2.5, y], { ink: 'mains', pen: 'strong' })
    : line([CONVERTER_W - 2.5, y, CONVERTER_W, y], { ink: 'mains', pen: 'strong' })
