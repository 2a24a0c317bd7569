import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { contactModel } from './contact'
import { circle, line } from './draw'
import { choice, number } from './field'
import { fastened, fittingField } from './fitting'
import { leverLink, makeContact } from './sign'
import { inLine } from './terminal'

const W = 15
const H = 12.5
const Y = 5

export const floatSwitch = defineKind({
  key: 'float-switch',
  title: 'Float switch',
  group: 'control',
  letter: 'B',
  about: 'A contact that follows a liquid level.',
  words: ['level switch', 'bilge', 'tank', 'float'],
  fields: {
    ratingA: number('Rating', 'A', 'Current that the closed contact may carry for long.', { required: true }),
    closes: choice('Closes', 'Which way it works.', { rising: 'When full', falling: 'When empty' }, 'rising'),
    fitting: fittingField('tail'),
  },
  terminals: (v) => inLine(W, Y, undefined, fastened(v.fitting)),
  electrical: (v) => contactModel(v.ratingA),
  // A float on the liquid, linked to the lever.
  symbol: () => ({
    w: W,
    h: H,
    marks: [
      ...makeContact(W, Y),
      leverLink(W / 2, 8, Y),
      circle(W / 2, 9.5, 1.5),
      line([2.5, 10, W / 2 - 1.5, 10]),
      line([W / 2 + 1.5, 10, 12.5, 10]),
      line([4, 11.5, 11, 11.5]),
    ],
  }),
  caption: (v) => captions(figure(v.ratingA, 'A'), v.closes === 'rising' ? 'closes full' : 'closes empty'),
})
