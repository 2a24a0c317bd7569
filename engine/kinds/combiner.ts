import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { contactModel } from './contact'
import { takes } from './device'
import { number } from './field'
import { fittingField } from './fitting'
import { byVoltage, sensedSymbol, sensedTerminals, sensedVoltage } from './sensedcontact'

export const combiner = defineKind({
  key: 'combiner',
  title: 'Battery combiner',
  group: 'switching',
  letter: 'K',
  about: 'Joins two batteries while one of them is being charged, and parts them otherwise.',
  words: ['combiner', 'split charge', 'voltage sensing relay', 'isolator', 'paralleling'],
  fields: {
    ratingA: number('Contact rating', 'A', 'Current that the closed contact may carry for long.', {
      required: true,
      standard: [80, 100, 120, 125, 140, 160, 230, 500],
    }),
    closesV: number('Closes at', 'V', 'Rising voltage at which it joins the batteries.', {
      group: 'Thresholds',
    }),
    opensV: number('Opens at', 'V', 'Falling voltage at which it parts them.', { group: 'Thresholds' }),
    coilV: sensedVoltage,
    supplyA: number('Own current', 'A', 'Current of its coil while it is closed.', { initial: 0.1 }),
    fitting: fittingField('M8'),
  },
  terminals: (v) => sensedTerminals(['first battery', 'second battery'], v),
  electrical: (v) =>
    contactModel(
      v.ratingA,
      [takes({ key: 'supply', positive: '1', negative: '31', name: 'coil' }, v.supplyA)],
      byVoltage(['1', '2'], 'open', v),
    ),
  symbol: () => sensedSymbol('U>'),
  caption: (v) =>
    captions([figure(v.ratingA, 'A'), known(v.coilV, 'V')], [known(v.closesV, 'V'), known(v.opensV, 'V')]),
})
