import { defineKind } from '../model/kind'
import { line, moving, rect } from './draw'
import { choice, number } from './field'
import { fastened, fittingField } from './fitting'
import { breakingFields, fuseCaption, fuseModel, ratingLock } from './fuse'
import { makeContact } from './sign'
import { inLine } from './terminal'

const W = 15
const H = 7.5
const Y = 5

export const breaker = defineKind({
  key: 'breaker',
  title: 'Circuit breaker',
  group: 'protection',
  letter: 'F',
  about: 'Opens by itself on overcurrent and can be closed again; must be rated for direct current.',
  words: ['breaker', 'MCB', 'cut-out', 'trip', 'resettable'],
  fields: {
    ratingA: number('Rating', 'A', 'Rated current.', {
      required: true,
      // Ratings of NFPA 70 240.6, as restated in public, with the small ones of common practice.
      standard: [
        5, 7.5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250,
        300,
      ],
    }),
    ratingLocked: ratingLock,
    class: choice(
      'Release',
      'What trips it: decides how fast it clears.',
      { thermal: 'Thermal', magnetic: 'Magnetic', both: 'Thermal and magnetic' },
      'thermal',
    ),
    ...breakingFields({ voltageV: null, breakingKA: null }),
    fitting: fittingField('M6'),
  },
  terminals: (v) => inLine(W, Y, undefined, fastened(v.fitting)),
  electrical: (v) => fuseModel(v.ratingA),
  // Circuit breaker: the fixed contact carries a cross; a small box on the lever for the release.
  symbol: () => ({
    w: W,
    h: H,
    marks: [
      ...makeContact(W, Y),
      line([10.5, Y - 0.9, 12.3, Y + 0.9]),
      line([10.5, Y + 0.9, 12.3, Y - 0.9]),
      moving(rect(6.5, 1.9, 2, 2, { fill: 'paper' }), rect(6.5, Y - 1, 2, 2)),
    ],
  }),
  caption: fuseCaption,
})
