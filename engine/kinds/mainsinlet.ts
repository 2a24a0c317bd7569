import { defineKind, NOTHING } from '../model/kind'
import { captions, known } from './caption'
import { circle } from './draw'
import { number } from './field'
import { MAINS_H, MAINS_W, mainsSymbol } from './mainsbox'
import { terminal } from './terminal'

export const mainsInlet = defineKind({
  key: 'mains-inlet',
  title: 'Mains inlet',
  group: 'mains',
  letter: 'X',
  about: 'Where mains comes on board. For licensed persons only; not sized here.',
  words: ['shore power', 'inlet', 'AC', '230 V', '120 V', 'hook-up'],
  fields: { ratingA: number('Rating', 'A', 'Rated current of the inlet, for the record.') },
  terminals: () => [terminal('right', MAINS_W, 5, 'out', 'mains output', 'mains', { mark: '~', use: 'out' })],
  electrical: () => NOTHING,
  symbol: () =>
    mainsSymbol(
      MAINS_H,
      [{ side: 'right', y: 5 }],
      [
        circle(8.75, 5, 3.5, { ink: 'mains' }),
        ...[
          [8.75, 3.25],
          [7.25, 6],
          [10.25, 6],
        ].map(([x, y]) => circle(x!, y!, 0.5, { ink: 'mains', fill: 'mains', pen: 'thin' })),
      ],
    ),
  caption: (v) => captions(['mains', known(v.ratingA, 'A')]),
})
