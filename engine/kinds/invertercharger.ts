import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { charges, stageFields } from './charging'
import { converterSymbol, INPUT_SIGN, LOWER_Y, OUTPUT_SIGN, UPPER_Y } from './converter'
import { linkFields, linkMarks, linkTerminal } from './datalink'
import { arrow } from './draw'
import { number } from './field'
import { inverterAmps, inverterFields, inverterUse } from './inverter'
import { mainsLead, mainsTerminal, poleMarks, poles } from './poles'
import { alternatingSign, directSign } from './sign'

export const inverterCharger = defineKind({
  key: 'inverter-charger',
  title: 'Inverter-charger',
  group: 'converters',
  letter: 'T',
  about:
    'Makes mains from the batteries, or charges them when mains is there, through the same two conductors.',
  words: ['combi', 'inverter', 'charger', 'AC', 'mains', 'transfer'],
  fields: {
    ...inverterFields,
    chargeA: number('Charge current', 'A', 'Greatest charge current into the batteries.', { required: true }),
    ...stageFields,
    ...linkFields('wired'),
  },
  terminals: (v) => [
    ...poles('left', '', 'battery', v.fitting),
    mainsTerminal('right', 'mains-in', 'mains supply', UPPER_Y),
    mainsTerminal('right', 'mains-out', 'mains output', LOWER_Y),
    ...linkTerminal(v.data, 'up', 10, 0, v.dataPlug),
  ],
  electrical: (v, c) => {
    const drawA = inverterAmps(v, c)
    return {
      merges: [],
      branches: [],
      devices: [
        {
          key: 'battery-side',
          positive: '+',
          negative: '-',
          minA: drawA === null ? null : 0 - drawA,
          maxA: v.chargeA,
          sustainedFaultA: v.chargeA,
          role: 'two-way',
          ...inverterUse(v),
          ...charges(v),
        },
      ],
    }
  },
  results: (v, c) => ({ drawA: inverterAmps(v, c) }),
  symbol: (v) =>
    converterSymbol(directSign(...INPUT_SIGN), alternatingSign(...OUTPUT_SIGN), [
      ...poleMarks('left'),
      mainsLead('right', UPPER_Y),
      mainsLead('right', LOWER_Y),
      ...arrow(10, 13.75, 5, 13.75),
      ...arrow(10, 13.75, 15, 13.75),
      ...linkMarks(v.data, 10, 2.5),
    ]),
  caption: (v) => captions([figure(v.powerW, 'W'), `charges ${figure(v.chargeA, 'A')}`]),
})
