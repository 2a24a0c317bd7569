import type { ValuesOf } from '../model/fields'
import { defineKind, type ElectricalContext } from '../model/kind'
import { captions, figure } from './caption'
import { charges, stageFields } from './charging'
import {
  converterSymbol,
  efficiencyField,
  INPUT_SIGN,
  inputAmps,
  OUTPUT_SIGN,
  suppliedByInput,
} from './converter'
import { linkFields, linkMarks, linkTerminal } from './datalink'
import { gives, takes } from './device'
import { line, text } from './draw'
import { choice, flag, number, result } from './field'
import { fastened, fittingField } from './fitting'
import { poleMarks, poles, sharedNegative, sharedNegativeMarks } from './poles'
import { directSign } from './sign'
import { terminal } from './terminal'

const fields = {
  outputA: number('Charge current', 'A', 'Greatest output current into the house batteries.', {
    required: true,
    standard: [10, 12, 18, 20, 25, 30, 40, 50, 60],
  }),
  inputV: choice(
    'Input system',
    'Nominal voltage of the starting circuit.',
    { 12: '12 V', 24: '24 V' },
    '12',
  ),
  inputLowestV: number('Lowest input voltage', 'V', 'Where it stops. Empty: as low as the system goes.', {
    group: 'Conversion',
  }),
  efficiency: efficiencyField(90),
  inputLimitA: number('Input current limit', 'A', 'Greatest input current, where the data sheet states it.', {
    group: 'Conversion',
  }),
  ...stageFields,
  isolated: flag('Isolated', 'Input and output have no common negative; otherwise they share one terminal.'),
  signal: flag('Engine-running signal', 'Has a terminal for the engine-running signal (D+ or 15).', {
    initial: true,
  }),
  fitting: fittingField('clamp 16'),
  signalFitting: fittingField('clamp 2.5', 'Signal fastened by'),
  ...linkFields('wired'),
  inputA: result('Input current', 'A', 'Greatest input current, at the lowest input voltage.'),
}

/** Stated limit, or I = I_out · V_out / (η · V_in) at the lowest input and the highest output voltage, A. */
function inputCurrent(v: ValuesOf<typeof fields>, c: ElectricalContext): number | null {
  if (v.inputLimitA !== null) return v.inputLimitA
  const lowestV = v.inputLowestV ?? (Number(v.inputV) * c.lowestV) / c.systemV
  return inputAmps(v.outputA === null ? null : v.outputA * c.highestV, v.efficiency, lowestV)
}

export const alternatorCharger = defineKind({
  key: 'alternator-charger',
  title: 'Alternator charger',
  group: 'converters',
  letter: 'T',
  about: 'Charges the house batteries from the starting circuit while the engine runs.',
  words: ['DC-DC', 'DC to DC', 'charger', 'engine', 'booster'],
  fields,
  terminals: (v) => [
    ...(v.isolated
      ? [...poles('left', 'in', 'input', v.fitting), ...poles('right', 'out', 'output', v.fitting)]
      : [
          poles('left', 'in', 'input', v.fitting)[0]!,
          poles('right', 'out', 'output', v.fitting)[0]!,
          sharedNegative(v.fitting),
        ]),
    ...(v.signal
      ? [
          terminal('up', 5, 0, 'run', 'engine-running signal', 'sense', {
            mark: 'D+',
            ...fastened(v.signalFitting),
            takes: 1,
          }),
        ]
      : []),
    ...linkTerminal(v.data, 'up', 15, 0, v.dataPlug),
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
          ...charges(v),
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
      ...(v.signal ? [line([5, 0, 5, 2.5]), text(5.4, 2, 'D+')] : []),
      ...linkMarks(v.data, 15, 2.5),
    ]),
  caption: (v) => captions(figure(v.outputA, 'A')),
})
