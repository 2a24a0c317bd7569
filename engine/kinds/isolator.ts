import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { contactModel } from './contact'
import { line } from './draw'
import { number } from './field'
import { fastened, fittingField } from './fitting'
import { makeContact } from './sign'
import { inLine } from './terminal'

const W = 15
const H = 7.5
const Y = 5

export const isolator = defineKind({
  key: 'isolator',
  title: 'Isolator',
  group: 'switching',
  letter: 'Q',
  about: 'A switch that takes the supply off for work or in an emergency.',
  words: ['battery switch', 'disconnector', 'main switch', 'disconnect', 'emergency'],
  fields: {
    ratingA: number('Rating', 'A', 'Current that the closed switch may carry for long.', {
      required: true,
      standard: [50, 100, 150, 200, 250, 275, 300, 350, 500, 600],
    }),
    voltageV: number('Voltage rating', 'V', 'Highest direct voltage at which it may be opened under load.', {
      required: true,
    }),
    fitting: fittingField('M10'),
  },
  terminals: (v) => inLine(W, Y, undefined, fastened(v.fitting)),
  electrical: (v) => contactModel(v.ratingA),
  // Disconnector: the fixed contact ends in a cross stroke.
  symbol: () => ({
    w: W,
    h: H,
    marks: [...makeContact(W, Y), line([11.25, Y - 1.25, 11.25, Y + 1.25], { pen: 'strong' })],
  }),
  caption: (v) => captions([figure(v.ratingA, 'A'), known(v.voltageV, 'V')]),
})
