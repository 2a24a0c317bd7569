import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { LOAD_R, LOAD_X, LOAD_Y, loadModel, loadSymbol, loadTerminals } from './consumer'
import { rect } from './draw'
import { number } from './field'
import { fittingField } from './fitting'

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
    fitting: fittingField('unknown'),
  },
  terminals: loadTerminals,
  electrical: (v) => loadModel(v.currentA),
  symbol: () => loadSymbol([rect(LOAD_X - LOAD_R, LOAD_Y - LOAD_R, 2 * LOAD_R, 2 * LOAD_R, { dash: true })]),
  caption: (v) => captions(['spare', figure(v.currentA, 'A')]),
})
