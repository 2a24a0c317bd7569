import type { ValuesOf } from '../model/fields'
import type { PartDevice, SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import { REST_VOLTAGE } from '../tables/restvoltage'
import type { Volts } from '../units'
import { line, text } from './draw'
import { choice, number, result } from './field'
import { fastened, fittingField } from './fitting'
import { twoPoles } from './terminal'

/** What the kinds of battery share. */

const CHEMISTRY = {
  lfp: 'LiFePO4',
  agm: 'AGM',
  gel: 'Gel',
  flooded: 'Flooded lead-acid',
} as const
type Chemistry = keyof typeof CHEMISTRY

/** Rest voltage of a full battery for each 12 V: 4 × 3.2 V nominal; 6 lead-acid cells. Common practice, no source. */
const REST_V: Readonly<Record<Chemistry, Volts>> = { lfp: 12.8, agm: 12.8, gel: 12.8, flooded: 12.6 }

export const batteryFields = (chemistry: Chemistry, form: FittingKey) => ({
  chemistry: choice('Chemistry', 'What kind of cells the battery is made of.', CHEMISTRY, chemistry),
  volts: choice(
    'Nominal voltage',
    'Nominal voltage of this one battery, not of the bank.',
    { 6: '6 V', 12: '12 V', 24: '24 V', 48: '48 V' },
    '12',
  ),
  capacityAh: number('Capacity', 'Ah', 'Rated capacity of this one battery.', { required: true }),
  dischargeA: number(
    'Discharge limit',
    'A',
    'Greatest current that the battery may give for long, from its data sheet. Empty: no limit is stated.',
    { required: true, group: 'Limits' },
  ),
  chargeA: number(
    'Charge limit',
    'A',
    'Greatest charge current, from its data sheet. Empty: no limit is stated.',
    { required: true, group: 'Limits' },
  ),
  internalMOhm: number(
    'Internal resistance',
    'mΩ',
    'Typical direct-current resistance of the charged battery. A "not more than" figure gives too low a fault current.',
    { group: 'Fault' },
  ),
  internalIs: choice(
    'That figure is',
    'A maker\'s "not more than" says nothing on the greatest fault current; then type the short-circuit current too.',
    { typical: 'Typical, or measured', limit: 'Not more than' },
    'typical',
    { group: 'Fault' },
  ),
  shortCircuitKA: number(
    'Short-circuit current',
    'kA',
    'Prospective short-circuit current that the maker states, if any.',
    { group: 'Fault' },
  ),
  massKg: number('Mass', 'kg', 'Mass of this one battery.', { group: 'Body' }),
  fitting: fittingField(form),
  restV: result('Rest voltage', 'V', 'Voltage of the full battery without load, from its chemistry.'),
  energyWh: result('Energy', 'Wh', 'Rest voltage times capacity.'),
})
type BatteryValues = ValuesOf<ReturnType<typeof batteryFields>>

const restVoltage = (v: Pick<BatteryValues, 'chemistry' | 'volts'>): Volts =>
  REST_V[v.chemistry] * (Number(v.volts) / 12)

export const batteryResults = (v: BatteryValues) => ({
  restV: restVoltage(v),
  energyWh: v.capacityAh === null ? null : restVoltage(v) * v.capacityAh,
})

/** "LiFePO4", "Flooded lead-acid". */
export const batteryName = (v: Pick<BatteryValues, 'chemistry'>): string => CHEMISTRY[v.chemistry]

/**
 * A limit that is not stated is no limit. Whatever its limits, a battery feeds a fault without end. Where the
 * short-circuit current is stated and the resistance is not, or only as a limit, the one gives the other.
 */
export function batteryDevice(v: BatteryValues): PartDevice {
  const emfV = restVoltage(v)
  const stated = v.internalMOhm !== null && v.internalMOhm > 0 ? v.internalMOhm / 1000 : undefined
  const limit = v.internalIs === 'limit'
  const fromShort =
    v.shortCircuitKA !== null && v.shortCircuitKA > 0 ? emfV / (v.shortCircuitKA * 1000) : undefined
  const ohms = limit ? (fromShort ?? stated) : (stated ?? fromShort)
  return {
    key: 'cells',
    positive: '+',
    negative: '-',
    minA: v.chargeA === null ? 'unlimited' : 0 - v.chargeA,
    maxA: v.dischargeA ?? 'unlimited',
    sustainedFaultA: 'unlimited',
    emfV,
    restCurve: REST_VOLTAGE[v.chemistry].map(([charge, volts]) => [charge, volts * (Number(v.volts) / 12)]),
    ...(ohms === undefined ? {} : { internalOhms: ohms }),
    ...(limit && fromShort === undefined && stated !== undefined ? { internalIsLimit: true } : {}),
    role: 'battery',
  }
}

const W = 15
const H = 12.5

export const postsOf = (v: Pick<BatteryValues, 'fitting'>): readonly Terminal[] =>
  twoPoles('right', W, 2.5, 10, 'out', fastened(v.fitting))

/** Two cells, the long plate positive, a broken line for the cells between. */
export const batterySymbol = (more: readonly Mark[] = []): SymbolDrawing => ({
  w: W,
  h: H,
  marks: [
    line([W, 2.5, 6.25, 2.5, 6.25, 4.25]),
    line([1.25, 4.25, 11.25, 4.25]),
    line([3.75, 5.5, 8.75, 5.5], { pen: 'strong' }),
    line([6.25, 5.5, 6.25, 7], { dash: true }),
    line([1.25, 7, 11.25, 7]),
    line([3.75, 8.25, 8.75, 8.25], { pen: 'strong' }),
    line([6.25, 8.25, 6.25, 10, W, 10]),
    text(13.75, 2, '+', { anchor: 'middle' }),
    text(13.75, 9.5, '−', { anchor: 'middle' }),
    ...more,
  ],
})
