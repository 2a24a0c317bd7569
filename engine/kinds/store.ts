import type { ValuesOf } from '../model/fields'
import type { PartDevice, SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { FittingKey } from '../tables/fittings'
import { type Chemistry, FAULT_BASE_V, fullRestVoltage, NOMINAL_V, REST_VOLTAGE } from '../tables/restvoltage'
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
} as const satisfies Readonly<Record<Chemistry, string>>

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
  restV: result(
    'Rest voltage',
    'V',
    'Voltage of the full battery after some hours without current, from its chemistry. Common practice.',
  ),
  energyWh: result(
    'Energy',
    'Wh',
    'Capacity times nominal voltage: 12.8 V for each four cells of LiFePO4, 12 V for each six of lead-acid.',
  ),
})
type BatteryValues = ValuesOf<ReturnType<typeof batteryFields>>

/** How many times 12 V it is. */
const twelves = (v: Pick<BatteryValues, 'volts'>): number => Number(v.volts) / 12

export const batteryResults = (v: BatteryValues) => ({
  restV: fullRestVoltage(v.chemistry) * twelves(v),
  energyWh: v.capacityAh === null ? null : NOMINAL_V[v.chemistry] * twelves(v) * v.capacityAh,
})

/** "LiFePO4", "Flooded lead-acid". */
export const batteryName = (v: Pick<BatteryValues, 'chemistry'>): string => CHEMISTRY[v.chemistry]

/**
 * A limit that is not stated is no limit. Whatever its limits, a battery feeds a fault without end. Where the
 * short-circuit current is stated and the resistance is not, or only as a limit, the one gives the other.
 */
export function batteryDevice(v: BatteryValues): PartDevice {
  const emfV = FAULT_BASE_V * twelves(v)
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
    restCurve: REST_VOLTAGE[v.chemistry].map(([charge, volts]) => [charge, volts * twelves(v)]),
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
