import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { charges, stageFields } from './charging'
import { converterSymbol, INPUT_SIGN, OUTPUT_SIGN, UPPER_Y } from './converter'
import { linkFields, linkMarks, linkTerminal } from './datalink'
import { gives } from './device'
import { number } from './field'
import { fittingField } from './fitting'
import { mainsLead, mainsTerminal, poleMarks, poles } from './poles'
import { alternatingSign, directSign } from './sign'

export const mainsCharger = defineKind({
  key: 'mains-charger',
  title: 'Mains charger',
  group: 'sources',
  letter: 'T',
  about: 'Charges the batteries from mains; its mains side is for licensed persons only.',
  words: ['battery charger', 'shore', 'AC charger', 'power supply'],
  fields: {
    outputA: number('Charge current', 'A', 'Greatest output current.', {
      required: true,
      standard: [5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 100],
    }),
    ...stageFields,
    fitting: fittingField('clamp 16'),
    ...linkFields('none'),
  },
  terminals: (v) => [
    mainsTerminal('left', 'mains', 'mains supply', UPPER_Y),
    ...poles('right', '', 'output', v.fitting),
    ...linkTerminal(v.data, 'up', 10, 0, v.dataPlug),
  ],
  electrical: (v) => ({
    merges: [],
    branches: [],
    devices: [gives({ key: 'output', positive: '+', negative: '-', ...charges(v) }, v.outputA)],
  }),
  symbol: (v) =>
    converterSymbol(alternatingSign(...INPUT_SIGN), directSign(...OUTPUT_SIGN), [
      mainsLead('left', UPPER_Y),
      ...poleMarks('right'),
      ...linkMarks(v.data, 10, 2.5),
    ]),
  caption: (v) => captions(figure(v.outputA, 'A')),
})
