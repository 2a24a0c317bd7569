import type { ValuesOf } from '../model/fields'
import { defineKind, type ElectricalContext, type PartDevice } from '../model/kind'
import { captions, figure } from './caption'
import { converterSymbol, efficiencyField, INPUT_SIGN, inputAmps, LOWER_Y, OUTPUT_SIGN } from './converter'
import { takes } from './device'
import { flag, number, result } from './field'
import { fittingField } from './fitting'
import { mainsLead, mainsTerminal, poleMarks, poles } from './poles'
import { alternatingSign, directSign } from './sign'

/** What an inverter draws, shared with the inverter-charger. */
export const inverterFields = {
  powerW: number('Power', 'W', 'Rated continuous output power.', { required: true }),
  efficiency: efficiencyField(90),
  lowestV: number(
    'Cut-off voltage',
    'V',
    'Battery voltage where it stops. Empty: as low as the system goes.',
    {
      group: 'Conversion',
    },
  ),
  inrush: number('Surge', '×', 'Surge power as a multiple of the rated power.', {
    initial: 2,
    min: 1,
    group: 'Starting',
  }),
  inrushS: number('Surge lasts', 's', 'How long it can hold the surge.', { initial: 5, group: 'Starting' }),
  continuous: flag('Continuous', 'May run for three hours or more at a time.', {
    initial: true,
    group: 'Use',
  }),
  idleW: number('Idle power', 'W', 'Power that it takes while on without load.', { group: 'Use' }),
  hours: number('Hours a day', 'h', 'Hours at full power in a day, for the energy balance.', {
    max: 24,
    group: 'Use',
  }),
  fitting: fittingField('M8'),
  drawA: result(
    'Greatest battery current',
    'A',
    'Rated power at the lowest battery voltage, through its efficiency.',
  ),
}

/** I = P / (η · lowest battery voltage), A. */
export const inverterAmps = (
  v: Pick<ValuesOf<typeof inverterFields>, 'powerW' | 'efficiency' | 'lowestV'>,
  c: ElectricalContext,
): number | null => inputAmps(v.powerW, v.efficiency, v.lowestV ?? c.lowestV)

/** Power drawn at full use. */
export const inverterUse = (
  v: Pick<ValuesOf<typeof inverterFields>, 'powerW' | 'efficiency'>,
): Pick<PartDevice, 'atFullUse'> =>
  v.powerW === null || v.efficiency === null || v.efficiency <= 0
    ? {}
    : { atFullUse: { watts: v.powerW / (v.efficiency / 100) } }

export const inverter = defineKind({
  key: 'inverter',
  title: 'Inverter',
  group: 'converters',
  letter: 'T',
  about: 'Makes mains voltage from the batteries; its mains side is for licensed persons only.',
  words: ['AC', '230 V', '120 V', 'sine', 'mains'],
  fields: inverterFields,
  terminals: (v) => [
    ...poles('left', '', 'battery', v.fitting),
    mainsTerminal('right', 'mains', 'mains output', LOWER_Y),
  ],
  electrical: (v, c) => ({
    merges: [],
    branches: [],
    devices: [takes({ key: 'input', positive: '+', negative: '-', ...inverterUse(v) }, inverterAmps(v, c))],
  }),
  results: (v, c) => ({ drawA: inverterAmps(v, c) }),
  symbol: () =>
    converterSymbol(directSign(...INPUT_SIGN), alternatingSign(...OUTPUT_SIGN), [
      ...poleMarks('left'),
      mainsLead('right', LOWER_Y),
    ]),
  caption: (v) => captions(figure(v.powerW, 'W')),
})
