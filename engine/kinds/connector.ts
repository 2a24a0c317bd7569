import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { arc, line, rect } from './draw'
import { count, counted, number } from './field'
import { fastened, fittingField } from './fitting'
import { contactOhms } from './resistance'
import { terminal } from './terminal'

const W = 12.5
const PITCH = 5

const poles = count('Poles', 'Number of contacts side by side in one shell.', 1, 1, 13)

const numbers = (value: number | null): readonly number[] =>
  Array.from({ length: counted(value, poles) }, (_, i) => i + 1)

export const connector = defineKind({
  key: 'connector',
  title: 'Connector',
  group: 'distribution',
  letter: 'X',
  about: 'A plug and its socket in a line; can be parted by hand.',
  words: ['plug', 'coupler', 'in-line', 'trailer plug', 'disconnect'],
  fields: {
    poles,
    ratingA: number('Rating', 'A', 'Current that each contact may carry for long.', { required: true }),
    contactMOhm: number('Contact resistance', 'mΩ', 'Of one pair of contacts. Empty: 50 mV at the rating.'),
    fitting: fittingField('contact'),
  },
  terminals: (v) =>
    numbers(v.poles).flatMap((n) => [
      terminal('left', 0, PITCH * (n - 0.5), `${n}a`, `pole ${n}, plug`, 'any', {
        use: 'in',
        ...fastened(v.fitting),
      }),
      terminal('right', W, PITCH * (n - 0.5), `${n}b`, `pole ${n}, socket`, 'any', {
        use: 'out',
        ...fastened(v.fitting),
      }),
    ]),
  electrical: (v) => ({
    merges: [],
    branches: numbers(v.poles).map((n) => ({
      key: `${n}`,
      from: `${n}a`,
      to: `${n}b`,
      ohms: v.contactMOhm !== null && v.contactMOhm > 0 ? v.contactMOhm / 1000 : contactOhms(v.ratingA),
      kind: 'contact',
      ratingA: v.ratingA,
      name: `pole ${n}`,
    })),
    devices: [],
  }),
  symbol: (v) => ({
    w: W,
    h: PITCH * numbers(v.poles).length,
    marks: numbers(v.poles).flatMap((n) => {
      const y = PITCH * (n - 0.5)
      return [
        line([0, y, 3.75, y]),
        rect(3.75, y - 0.5, 3.25, 1, { fill: 'ink', pen: 'thin' }),
        arc(6.75, y, 1.75, -90, 90),
        line([8.5, y, W, y]),
      ]
    }),
  }),
  caption: (v) => captions(figure(v.ratingA, 'A')),
})
