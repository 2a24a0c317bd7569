import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { circle, line, rect } from './draw'
import { choice, count, counted, number } from './field'
import { terminal } from './terminal'

const W = 5
const PITCH = 5

const studs = count(
  'Studs',
  'Number of studs or screws; each can be reached from both sides of the drawing.',
  6,
  2,
  40,
)

/** A stud takes four lugs at most, two from each side. Common practice, no source. */
const LUGS_A_SIDE = 2

export const busbar = defineKind({
  key: 'busbar',
  title: 'Busbar',
  group: 'distribution',
  letter: 'W',
  about: 'A bar with studs: all conductors on it are joined. For feeds or for returns.',
  words: ['bus bar', 'bar', 'distribution', 'negative bar', 'positive bar', 'return bar', 'common', 'stud'],
  fields: {
    studs,
    pole: choice(
      'Pole',
      'Which pole the bar is for; a conductor of the other pole is then refused.',
      { any: 'Taken from what is joined', positive: 'Positive', negative: 'Negative (returns)' },
      'any',
    ),
    ratingA: number('Rating', 'A', 'Greatest current that may pass along the bar for long.', {
      required: true,
      standard: [100, 150, 200, 250, 300, 500, 600, 1000],
    }),
    stud: choice('Stud', 'Size of the studs.', { M5: 'M5', M6: 'M6', M8: 'M8', M10: 'M10' }, 'M8'),
  },
  terminals: (v) =>
    studNumbers(v.studs).flatMap((n) =>
      (['left', 'right'] as const).map((side) =>
        terminal(side, side === 'left' ? 0 : W, PITCH * (n - 0.5), `${n}${side[0]}`, `stud ${n}`, v.pole, {
          takes: LUGS_A_SIDE,
          stud: v.stud,
        }),
      ),
    ),
  electrical: (v) => ({
    merges: [studNumbers(v.studs).flatMap((n) => [`${n}l`, `${n}r`])],
    branches: [],
    devices: [],
  }),
  symbol: (v) => ({
    w: W,
    h: PITCH * studNumbers(v.studs).length,
    marks: [
      ...studNumbers(v.studs).map((n) => line([0, PITCH * (n - 0.5), W, PITCH * (n - 0.5)])),
      rect(1.25, 0.25, 2.5, PITCH * studNumbers(v.studs).length - 0.5, { pen: 'strong', fill: 'tint' }),
      ...studNumbers(v.studs).map((n) => circle(2.5, PITCH * (n - 0.5), 0.6, { fill: 'paper' })),
    ],
  }),
  caption: (v) => captions([figure(v.ratingA, 'A'), v.stud]),
})

const studNumbers = (value: number | null): readonly number[] =>
  Array.from({ length: counted(value, studs) }, (_, i) => i + 1)
