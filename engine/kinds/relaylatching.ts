import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { coilCaption, coilFields } from './coil'
import { contact } from './contact'
import { takes } from './device'
import { line, rect, text } from './draw'
import { number } from './field'
import { fastened, fittingField } from './fitting'
import { leverLink, makeContact } from './sign'
import { terminal } from './terminal'

const W = 17.5
const H = 20

export const relayLatching = defineKind({
  key: 'relay-latching',
  title: 'Relay, latching',
  group: 'switching',
  letter: 'K',
  about: 'One pulse closes it, another opens it; it holds without current.',
  words: ['relay', 'latching', 'bistable', 'remote switch', 'pulse'],
  fields: {
    ratingA: number('Contact rating', 'A', 'Current that the closed contact may carry for long.', {
      required: true,
      standard: [50, 80, 100, 160, 200, 260, 500],
    }),
    fitting: fittingField('M8'),
    coilV: { ...coilFields.coilV, about: 'Rated direct voltage of the two coils, from their marking.' },
    coilA: {
      ...coilFields.coilA,
      label: 'Pulse current',
      about: 'Current of a coil while it is pulsed.',
      initial: 1,
    },
    coilFitting: coilFields.coilFitting,
  },
  terminals: (v) => [
    terminal('left', 0, 5, '30', 'contact, feed', 'any', { mark: '30', use: 'in', ...fastened(v.fitting) }),
    terminal('right', W, 5, '87', 'contact, make', 'any', { mark: '87', use: 'out', ...fastened(v.fitting) }),
    terminal('left', 0, 12.5, 'close', 'coil, close', 'positive', {
      mark: 'I',
      use: 'in',
      ...fastened(v.coilFitting),
    }),
    terminal('left', 0, 17.5, 'open', 'coil, open', 'positive', {
      mark: 'O',
      use: 'in',
      ...fastened(v.coilFitting),
    }),
    terminal('right', W, 15, '85', 'coils, return', 'negative', {
      mark: '85',
      use: 'out',
      ...fastened(v.coilFitting),
    }),
  ],
  electrical: (v) => ({
    merges: [],
    branches: [
      contact('30', '87', v.ratingA, {
        key: '30-87',
        name: 'contact 30 to 87',
        workedBy: { by: 'pulses', close: 'close', open: 'open' },
      }),
    ],
    devices: [
      takes({ key: 'close', positive: 'close', negative: '85', name: 'closing coil' }, v.coilA),
      takes({ key: 'open', positive: 'open', negative: '85', name: 'opening coil' }, v.coilA),
    ],
  }),
  symbol: () => ({
    w: W,
    h: H,
    marks: [
      ...makeContact(W, 5),
      text(0.4, 4.4, '30'),
      text(W - 0.4, 4.4, '87', { anchor: 'end' }),
      leverLink(W / 2, 10.75, 5),
      ...[12.5, 17.5].flatMap((y) => [
        line([0, y, W / 2 - 2.5, y]),
        rect(W / 2 - 2.5, y - 1.75, 5, 3.5),
        line([W / 2 + 2.5, y, 12.75, y]),
      ]),
      line([12.75, 12.5, 12.75, 17.5]),
      line([12.75, 15, W, 15]),
      text(1.25, 11.9, 'I', { anchor: 'middle' }),
      text(1.25, 16.9, 'O', { anchor: 'middle' }),
      text(W - 0.4, 14.4, '85', { anchor: 'end' }),
    ],
  }),
  caption: (v) => captions([figure(v.ratingA, 'A'), coilCaption(v)]),
})
