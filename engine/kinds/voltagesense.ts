import { defineKind, NOTHING } from '../model/kind'
import { captions } from './caption'
import { linkFields, linkMarks, linkTerminal } from './datalink'
import { circle, letter, line, text } from './draw'
import { fastened, fittingField } from './fitting'
import { terminal } from './terminal'

export const voltageSense = defineKind({
  key: 'voltage-sense',
  title: 'Voltage sense',
  group: 'measuring',
  letter: 'B',
  about: 'Reads the voltage between two points; its leads carry no supply current and need a small fuse.',
  words: ['voltmeter', 'voltage sensor', 'sense lead', 'meter'],
  fields: { fitting: fittingField('clamp 2.5'), ...linkFields('wired') },
  terminals: (v) => [
    terminal('left', 0, 5, '+', 'sense, positive', 'sense', {
      mark: '+',
      use: 'in',
      ...fastened(v.fitting),
      takes: 1,
    }),
    terminal('left', 0, 12.5, '-', 'sense, negative', 'sense', {
      mark: '−',
      use: 'out',
      ...fastened(v.fitting),
      takes: 1,
    }),
    ...linkTerminal(v.data, 'up', 10, 0, v.dataPlug),
  ],
  electrical: () => NOTHING,
  symbol: (v) => ({
    w: 15,
    h: 15,
    marks: [
      line([0, 5, 10, 5]),
      line([0, 12.5, 10, 12.5]),
      circle(10, 8.75, 3.75, { fill: 'paper' }),
      letter(10, 8.75, 'V', 2.5),
      text(1.25, 4.5, '+', { anchor: 'middle' }),
      text(1.25, 12, '−', { anchor: 'middle' }),
      ...linkMarks(v.data, 10, 5),
    ],
  }),
  caption: () => captions(),
})
