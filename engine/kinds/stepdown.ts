import type { ValuesOf } from '../model/fields'
import { defineKind, type ElectricalContext } from '../model/kind'
import { captions, figure } from './caption'
import {
  converterSymbol,
  efficiencyField,
  INPUT_SIGN,
  inputAmps,
  OUTPUT_SIGN,
  suppliedByInput,
} from './converter'
import { gives, takes } from './device'
import { flag, number, result } from './field'
import { fittingField } from './fitting'
import { poleMarks, poles, sharedNegative, sharedNegativeMarks } from './poles'
import { directSign } from './sign'

const fields = {
  outputA: number('Output current', 'A', 'Greatest output current.', { required: true }),
  outputV: number('Output voltage', 'V', 'Voltage of the circuits that it feeds.', {
    initial: 12,
    min: 1,
    standard: [5, 12, 13.8, 24],
  }),
  efficiency: efficiencyField(90),
  isolated: flag('Isolated', 'Input and output have no common negative; otherwise they share one terminal.'),
  fitting: fittingField('clamp 10'),
  inputA: result('Input current', 'A', 'Greatest input current, at the lowest system voltage.'),
}

const inputCurrent = (v: ValuesOf<typeof fields>, c: ElectricalContext): number | null =>
  inputAmps(v.outputA === null || v.outputV === null ? null : v.outputA * v.outputV, v.efficiency, c.lowestV)

export const stepDown = defineKind({
  key: 'step-down',
  title: 'Step-down converter',
  group: 'converters',
  letter: 'T',
  about: 'Feeds circuits of a lower voltage, such as 12 V in a 24 V system.',
  words: ['DC-DC', 'DC to DC', 'dropper', 'reducer', '24 to 12', 'buck'],
  fields,
  terminals: (v) =>
    v.isolated
      ? [...poles('left', 'in', 'input', v.fitting), ...poles('right', 'out', 'output', v.fitting)]
      : [
          poles('left', 'in', 'input', v.fitting)[0]!,
          poles('right', 'out', 'output', v.fitting)[0]!,
          sharedNegative(v.fitting),
        ],
  electrical: (v, c) => ({
    merges: [],
    branches: [],
    devices: [
      takes(
        { key: 'input', positive: 'in+', negative: v.isolated ? 'in-' : '-', name: 'input' },
        inputCurrent(v, c),
      ),
      gives(
        {
          key: 'output',
          positive: 'out+',
          negative: v.isolated ? 'out-' : '-',
          name: 'output',
          ...suppliedByInput(v.efficiency),
          holdsV: v.outputV,
        },
        v.outputA,
      ),
    ],
  }),
  results: (v, c) => ({ inputA: inputCurrent(v, c) }),
  symbol: (v) =>
    converterSymbol(directSign(...INPUT_SIGN), directSign(...OUTPUT_SIGN), [
      ...poleMarks('left', v.isolated),
      ...poleMarks('right', v.isolated),
      ...(v.isolated ? [] : sharedNegativeMarks()),
    ]),
  caption: (v) => captions([`to ${figure(v.outputV, 'V')}`, figure(v.outputA, 'A')]),
})
