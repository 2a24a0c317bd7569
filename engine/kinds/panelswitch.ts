import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { contactModel } from './contact'
import { line } from './draw'
import { number } from './field'
import { fastened, fittingField } from './fitting'
import { leverLink, makeContact } from './sign'
import { inLine } from './terminal'

const W = 15
const H = 7.5
const Y = 5

export const panelSwitch = defineKind({
  key: 'panel-switch',
  title: 'Panel switch',
  group: 'switching',
  letter: 'S',
  about: 'A hand switch on a panel; for anything but a small load it works a relay.',
  words: ['toggle', 'rocker', 'button', 'on off', 'hand switch'],
  fields: {
    ratingA: number('Rating', 'A', 'Current that the closed switch may carry for long.', {
      required: true,
      standard: [3, 6, 10, 15, 16, 20],
    }),
    fitting: fittingField('blade 6.3'),
  },
  terminals: (v) => inLine(W, Y, undefined, fastened(v.fitting)),
  electrical: (v) => contactModel(v.ratingA),
  // Worked by hand: a broken link from the lever to a short bar.
  symbol: () => ({
    w: W,
    h: H,
    marks: [...makeContact(W, Y), leverLink(7.5, 0.4, Y), line([5.75, 0.4, 9.25, 0.4])],
  }),
  caption: (v) => captions(figure(v.ratingA, 'A')),
})
