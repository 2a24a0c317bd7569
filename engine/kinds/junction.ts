import { defineKind } from '../model/kind'
import { captions, known } from './caption'
import { circle, line } from './draw'
import { number } from './field'
import { fastened, fittingField } from './fitting'
import { terminal } from './terminal'

export const junction = defineKind({
  key: 'junction',
  title: 'Junction',
  group: 'distribution',
  letter: 'X',
  about: 'A splice or a single stud where a few conductors meet.',
  words: ['splice', 'joint', 'join', 'stud', 'tee', 'branch'],
  fields: {
    ratingA: number('Rating', 'A', 'Greatest current that may pass through it for long, if stated.'),
    fitting: fittingField('splice'),
  },
  terminals: (v) => [
    terminal('left', 0, 2.5, 'l', 'left', 'any', fastened(v.fitting)),
    terminal('right', 5, 2.5, 'r', 'right', 'any', fastened(v.fitting)),
    terminal('up', 2.5, 0, 'u', 'upper', 'any', fastened(v.fitting)),
    terminal('down', 2.5, 5, 'd', 'lower', 'any', fastened(v.fitting)),
  ],
  electrical: () => ({ merges: [['l', 'r', 'u', 'd']], branches: [], devices: [] }),
  symbol: () => ({
    w: 5,
    h: 5,
    marks: [
      line([0, 2.5, 5, 2.5]),
      line([2.5, 0, 2.5, 5]),
      circle(2.5, 2.5, 0.9, { fill: 'ink', pen: 'thin' }),
    ],
  }),
  caption: (v) => captions(known(v.ratingA, 'A')),
})
