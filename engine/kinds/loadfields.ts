import type { ValuesOf } from '../model/fields'
import type { ElectricalContext, PartDevice } from '../model/kind'
import type { FittingKey } from '../tables/fittings'
import type { Amps, Volts } from '../units'
import { choice, flag, number, result } from './field'
import { fittingField } from './fitting'

/** Usual figures of a kind of load, offered until typed over. Common practice, no source. */
interface Usual {
  readonly nature?: 'current' | 'power' | 'resistance'
  readonly inrush?: number
  readonly inrushS?: number
  readonly continuous?: boolean
  readonly hours?: number | null
  readonly fitting?: FittingKey
}

export const loadFields = (usual: Usual = {}) => ({
  currentA: number(
    'Running current',
    'A',
    'Current while it runs. Give this or the power; the current counts.',
  ),
  powerW: number('Power', 'W', 'Rated power, where the current is not stated.'),
  ratedV: number(
    'Rated voltage',
    'V',
    'Voltage of the stated power. Empty: that of the system; a load behind a step-down converter has another.',
  ),
  nature: choice(
    'Behaves as',
    'How its current changes with voltage: electronics draw more as the voltage falls, heaters draw less.',
    { current: 'Constant current', power: 'Constant power', resistance: 'Resistance' },
    usual.nature ?? 'current',
  ),
  inrush: number('Inrush', '×', 'Starting current as a multiple of the running current; 1: none.', {
    initial: usual.inrush ?? 1,
    min: 1,
    group: 'Starting',
  }),
  inrushS: number('Inrush lasts', 's', 'How long the starting current lasts.', {
    initial: usual.inrushS ?? 0,
    group: 'Starting',
  }),
  service: choice(
    'Service',
    'Critical circuits are held to a smaller voltage drop.',
    { general: 'General', critical: 'Critical' },
    'general',
    { group: 'Use' },
  ),
  continuous: flag('Continuous', 'May run for three hours or more at a time.', {
    initial: usual.continuous ?? true,
    group: 'Use',
  }),
  hours: number('Hours a day', 'h', 'Hours of running in a day, for the energy balance.', {
    initial: usual.hours ?? null,
    max: 24,
    group: 'Use',
  }),
  fitting: fittingField(usual.fitting ?? 'tail'),
  worstA: result('Worst running current', 'A', 'Largest running current over the voltages of the system.'),
})
export type LoadValues = ValuesOf<ReturnType<typeof loadFields>>

type Draw = Pick<LoadValues, 'currentA' | 'powerW' | 'ratedV' | 'nature'>

/** Current at the rated voltage, A; null where neither current nor power is stated. */
function ratedAmps(v: Draw, c: ElectricalContext): Amps | null {
  if (v.currentA !== null) return v.currentA
  return v.powerW === null ? null : v.powerW / ratedVolts(v, c)
}

const ratedVolts = (v: Draw, c: ElectricalContext): Volts =>
  v.ratedV !== null && v.ratedV > 0 ? v.ratedV : c.systemV

/**
 * Largest running current, A; null where neither current nor power is stated. Constant power is dearest at the
 * lowest voltage, a resistance at the highest; both move in the proportion in which the system's does.
 */
export function runningAmps(v: Draw, c: ElectricalContext): Amps | null {
  const rated = ratedAmps(v, c)
  if (rated === null || v.nature === 'current') return rated
  return v.nature === 'power' ? rated * (c.systemV / c.lowestV) : rated * (c.highestV / c.systemV)
}

/** What it is at an operating point, where it is not a constant current. */
export function fullUse(v: Draw, c: ElectricalContext): Pick<PartDevice, 'atFullUse'> {
  const rated = ratedAmps(v, c)
  if (rated === null || rated <= 0 || v.nature === 'current') return {}
  const volts = ratedVolts(v, c)
  return { atFullUse: v.nature === 'power' ? { watts: rated * volts } : { ohms: volts / rated } }
}
