import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { byCoil, coilCaption, coilDevice, coilFields, coilMarks, coilTerminals } from './coil'
import { contact, contactFitting, contactForm } from './contact'
import { line, moving, text } from './draw'
import { number } from './field'
import { fastened } from './fitting'
import { pivot } from './sign'
import { terminal } from './terminal'

const W = 17.5
const H = 20

export const relayChangeover = defineKind({
  key: 'relay-changeover',
  title: 'Relay, changeover contact',
  group: 'switching',
  letter: 'K',
  about: 'Switches 30 from 87a (at rest) to 87 (coil fed).',
  words: ['relay', 'changeover', 'normally closed', '30', '87', '87a', 'SPDT'],
  fields: {
    ratingA: number('Make contact rating', 'A', 'Current that 30 to 87 may carry for long.', {
      required: true,
      standard: [20, 30, 40, 60, 80],
    }),
    breakRatingA: number('Break contact rating', 'A', 'Current that 30 to 87a may carry; often less.', {
      required: true,
      standard: [10, 20, 30, 40],
    }),
    fitting: contactFitting,
    ...coilFields,
  },
  terminals: (v) => {
    const by = fastened(contactForm(v))
    return [
      terminal('left', 0, 7.5, '30', 'contact, common', 'any', { mark: '30', use: 'in', ...by }),
      terminal('right', W, 5, '87a', 'contact, break', 'any', { mark: '87a', use: 'out', ...by }),
      terminal('right', W, 10, '87', 'contact, make', 'any', { mark: '87', use: 'out', ...by }),
      ...coilTerminals(W, 17.5, v),
    ]
  },
  electrical: (v) => ({
    merges: [],
    branches: [
      contact('30', '87', v.ratingA, {
        key: '30-87',
        name: 'contact 30 to 87',
        changeover: { name: '30', position: '87' },
        ...byCoil('fed'),
      }),
      contact('30', '87a', v.breakRatingA, {
        key: '30-87a',
        name: 'contact 30 to 87a',
        changeover: { name: '30', position: '87a' },
        ...byCoil('at-rest'),
      }),
    ],
    devices: [coilDevice(v.coilA)],
  }),
  symbol: () => ({
    w: W,
    h: H,
    marks: [
      line([0, 7.5, 5, 7.5]),
      pivot(5, 7.5),
      moving(line([5, 7.5, 12, 6.1], { pen: 'strong' }), line([5, 7.5, 12, 8.9])),
      line([11.25, 6.25, 11.25, 5, W, 5]),
      line([11.25, 8.75, 11.25, 10, W, 10]),
      text(0.4, 6.9, '30'),
      text(W - 0.4, 4.4, '87a', { anchor: 'end' }),
      text(W - 0.4, 9.4, '87', { anchor: 'end' }),
      ...coilMarks(W, 17.5, (from) =>
        moving(line([W / 2, from, W / 2, 6.8], { pen: 'thin', dash: true }), line([W / 2, from, W / 2, 8.2])),
      ),
    ],
  }),
  caption: (v) => captions([`${figure(v.ratingA, 'A')} / ${figure(v.breakRatingA, 'A')}`, coilCaption(v)]),
})
