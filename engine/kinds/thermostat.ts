import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { contactModel } from './contact'
import { letter, rect } from './draw'
import { choice, number } from './field'
import { fastened, fittingField } from './fitting'
import { leverLink, makeContact } from './sign'
import { inLine } from './terminal'

const W = 15
const H = 12.5
const Y = 5

export const thermostat = defineKind({
  key: 'thermostat',
  title: 'Thermostat',
  group: 'control',
  letter: 'B',
  about: 'A contact that follows temperature.',
  words: ['temperature switch', 'heating', 'cooling', 'fan switch'],
  fields: {
    ratingA: number('Rating', 'A', 'Current that the closed contact may carry for long.', { required: true }),
    atC: number('Switches at', '°C', 'Temperature at which it switches.', { min: -60 }),
    closes: choice('Closes', 'Which way it works.', { rising: 'When warm', falling: 'When cold' }, 'rising'),
    fitting: fittingField('blade 6.3'),
  },
  terminals: (v) => inLine(W, Y, undefined, fastened(v.fitting)),
  electrical: (v) => contactModel(v.ratingA),
  symbol: () => ({
    w: W,
    h: H,
    marks: [
      ...makeContact(W, Y),
      leverLink(W / 2, 7.5, Y),
      rect(W / 2 - 3.75, 7.5, 7.5, 4.5),
      letter(W / 2, 9.75, 't°', 2.5),
    ],
  }),
  caption: (v) =>
    captions(
      [figure(v.ratingA, 'A'), known(v.atC, '°C')],
      v.closes === 'rising' ? 'closes warm' : 'closes cold',
    ),
})
