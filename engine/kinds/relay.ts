import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { byCoil, coilCaption, coilDevice, coilFields, coilMarks, coilTerminals } from './coil'
import { contact, contactFitting, contactForm } from './contact'
import { text } from './draw'
import { number } from './field'
import { fastened } from './fitting'
import { leverLink, makeContact } from './sign'
import { terminal } from './terminal'

const W = 17.5
const H = 15
const Y = 5

export const relay = defineKind({
  key: 'relay',
  title: 'Relay, make contact',
  group: 'switching',
  letter: 'K',
  about: 'A small current in the coil switches a large one: a panel switch works the coil.',
  words: ['relay', 'contactor', 'solenoid', 'normally open', 'make', '30', '87'],
  fields: {
    ratingA: number('Contact rating', 'A', 'Current that the closed contact may carry for long.', {
      required: true,
      standard: [20, 30, 40, 50, 70, 80, 100, 120, 150, 200, 250, 300, 500],
    }),
    fitting: contactFitting,
    ...coilFields,
  },
  terminals: (v) => {
    const by = fastened(contactForm(v))
    return [
      terminal('left', 0, Y, '30', 'contact, feed', 'any', { mark: '30', use: 'in', ...by }),
      terminal('right', W, Y, '87', 'contact, make', 'any', { mark: '87', use: 'out', ...by }),
      ...coilTerminals(W, 12.5, v),
    ]
  },
  electrical: (v) => ({
    merges: [],
    branches: [contact('30', '87', v.ratingA, { key: '30-87', name: 'contact 30 to 87', ...byCoil('fed') })],
    devices: [coilDevice(v.coilA)],
  }),
  symbol: () => ({
    w: W,
    h: H,
    marks: [
      ...makeContact(W, Y),
      text(0.4, Y - 0.6, '30'),
      text(W - 0.4, Y - 0.6, '87', { anchor: 'end' }),
      ...coilMarks(W, 12.5, (from) => leverLink(W / 2, from, Y)),
    ],
  }),
  caption: (v) => captions([figure(v.ratingA, 'A'), coilCaption(v)]),
})
