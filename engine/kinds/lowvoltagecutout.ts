import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { contactModel } from './contact'
import { takes } from './device'
import { number } from './field'
import { fittingField } from './fitting'
import { byVoltage, sensedSymbol, sensedTerminals, sensedVoltage } from './sensedcontact'

export const lowVoltageCutOut = defineKind({
  key: 'low-voltage-cut-out',
  title: 'Low-voltage cut-out',
  group: 'switching',
  letter: 'K',
  about: 'Takes the loads off before the battery is empty, and puts them back when it has recovered.',
  words: ['low voltage', 'disconnect', 'under-voltage', 'load shed'],
  fields: {
    ratingA: number('Rating', 'A', 'Current that it may carry for long.', {
      required: true,
      standard: [20, 40, 65, 100, 160, 200, 220],
    }),
    opensV: number('Opens at', 'V', 'Falling voltage at which it takes the loads off.', {
      group: 'Thresholds',
    }),
    closesV: number('Closes at', 'V', 'Rising voltage at which it puts them back.', { group: 'Thresholds' }),
    coilV: sensedVoltage,
    supplyA: number('Own current', 'A', 'Current of its electronics.', { initial: 0.01 }),
    fitting: fittingField('M8'),
  },
  terminals: (v) => sensedTerminals(['supply side', 'load side'], v),
  electrical: (v) =>
    contactModel(
      v.ratingA,
      [takes({ key: 'supply', positive: '1', negative: '31', name: 'electronics' }, v.supplyA)],
      byVoltage(['1'], 'closed', v),
    ),
  symbol: () => sensedSymbol('U<'),
  caption: (v) =>
    captions([figure(v.ratingA, 'A'), known(v.coilV, 'V')], [known(v.opensV, 'V'), known(v.closesV, 'V')]),
})
