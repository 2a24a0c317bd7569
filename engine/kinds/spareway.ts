import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { loadModel, loadSymbol, loadTerminals } from './consumer'
import { letter, rect } from './draw'
import { number } from './field'

export const spareWay = defineKind({
  key: 'spare-way',
  title: 'Spare way',
  group: 'loads',
  letter: 'E',
  about: 'Room for a load that may come later; its current counts as if it were there.',
  words: ['spare', 'future', 'reserve', 'later'],
  fields: {
    currentA: number('Reserved current', 'A', 'Current that the conductors and fuses must be ready for.', {
      required: true,
    }),
  },
  terminals: loadTerminals,
  electrical: (v) => loadModel(v.currentA),
  symbol: () =>
    loadSymbol([rect(6.25, 2.5, 7.5, 7.5, { dash: true, fill: 'paper' }), letter(10, 6.25, '?', 2.5)]),
  caption: (v) => captions(['spare', figure(v.currentA, 'A')]),
})
