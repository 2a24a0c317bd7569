import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { charges, stageFields } from './charging'
import { converterSymbol, efficiencyField, INPUT_SIGN, OUTPUT_SIGN, suppliedByInput } from './converter'
import { linkFields, linkMarks, linkTerminal } from './datalink'
import { gives, takes } from './device'
import { letter } from './draw'
import { choice, flag, number } from './field'
import { fittingField } from './fitting'
import { poleMarks, poles } from './poles'
import { directSign } from './sign'

export const solarController = defineKind({
  key: 'solar-controller',
  title: 'Solar controller',
  group: 'converters',
  letter: 'T',
  about: 'Charges the batteries from one PV array.',
  words: ['MPPT', 'PWM', 'regulator', 'charge controller', 'PV', 'solar'],
  fields: {
    method: choice(
      'Method',
      'MPPT converts the voltage; PWM joins the array straight to the battery.',
      { mppt: 'MPPT', pwm: 'PWM' },
      'mppt',
    ),
    outputA: number('Charge current', 'A', 'Greatest output current into the batteries.', {
      required: true,
      standard: [10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 85, 100],
    }),
    pvMaxV: number(
      'Greatest PV voltage',
      'V',
      'The input is destroyed above this voltage, cold mornings included.',
      {
        required: true,
        group: 'PV input',
      },
    ),
    pvMinV: number('Least PV voltage', 'V', 'Below this voltage at the array it does not charge.', {
      group: 'PV input',
    }),
    pvMaxA: number('Greatest PV short-circuit current', 'A', 'From its data sheet, if stated.', {
      group: 'PV input',
    }),
    efficiency: efficiencyField(95),
    ...stageFields,
    isolated: flag(
      'Isolated',
      'PV negative and battery negative are apart; otherwise they are joined inside.',
    ),
    fitting: fittingField('clamp 16'),
    ...linkFields('wired'),
  },
  terminals: (v) => [
    ...poles('left', 'pv', 'PV', v.fitting),
    ...poles('right', 'bat', 'battery', v.fitting),
    ...linkTerminal(v.data, 'up', 10, 0, v.dataPlug),
  ],
  // The array alone limits what the input takes.
  electrical: (v) => ({
    merges: v.isolated ? [] : [['pv-', 'bat-']],
    branches: [],
    devices: [
      takes({ key: 'input', positive: 'pv+', negative: 'pv-', name: 'PV input' }, 'unlimited'),
      gives(
        {
          key: 'output',
          positive: 'bat+',
          negative: 'bat-',
          name: 'output',
          ...suppliedByInput(v.efficiency, v.method === 'pwm' ? 'current' : 'power'),
          ...charges(v),
        },
        v.outputA,
      ),
    ],
  }),
  symbol: (v) =>
    converterSymbol([letter(INPUT_SIGN[0] - 1, INPUT_SIGN[1], 'PV')], directSign(...OUTPUT_SIGN), [
      ...poleMarks('left'),
      ...poleMarks('right'),
      ...linkMarks(v.data, 10, 2.5),
    ]),
  caption: (v) => captions([figure(v.outputA, 'A'), known(v.pvMaxV, 'V')]),
})
