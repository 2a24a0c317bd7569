import { commissioningRecord, type ReadingRecord } from '../../../engine/calc/commissioning/record'
import type { Reading, TestStep } from '../../../engine/calc/commissioning/step'
import { commissioningSteps } from '../../../engine/calc/commissioning/steps'
import type { Design } from '../../../engine/model/design'
import { type DesignBuilder, design, partNamed } from '../../build'

/** IEC 60228 class 5, as restated in public: 7.98 mΩ/m for 2.5 mm², 1.21 mΩ/m for 16 mm². Two terminations of 20 µΩ (common practice). */
export const THIN = { size: '2.5mm2', lengthM: 5 } as const
export const THIN_OHMS = 5 * 0.00798 + 2 * 0.00002
export const THICK = { size: '16mm2', lengthM: 0.5 } as const
export const THICK_OHMS = 0.5 * 0.00121 + 2 * 0.00002
/** 50 mV at 100 A. */
export const SHUNT_OHMS = 0.05 / 100
/** LiFePO4 of 12 V, full (common practice, no source), behind the resistance that is typed. */
export const FULL_V = 13.4
export const BATTERY_OHMS = 0.004

/** Battery, battery shunt, load-side shunt, and the two bars between them. */
export const withShunts = (): DesignBuilder =>
  design({ systemV: 12 })
    .part(
      'battery',
      'G1',
      { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 },
      { name: 'House' },
    )
    .part('shunt', 'B1', { role: 'battery', ratingA: 100, millivolts: 50 })
    .part('shunt', 'B2', { role: 'load', ratingA: 100, millivolts: 50 })
    .part('busbar', 'W90', { pole: 'negative' }, { name: 'Sources bar' })
    .part('busbar', 'W91', { pole: 'negative' }, { name: 'Loads bar' })
    .join('G1.-', 'B1.b', THICK)
    .join('B1.s', 'W90.1l', THICK)
    .join('W90.2l', 'B2.b', THICK)
    .join('B2.s', 'W91.1l', THICK)

/** A load on the positive post, its return on a bar. */
export const addLoad = (
  to: DesignBuilder,
  name: string,
  currentA: number | null,
  stud = 'W91.2l',
): DesignBuilder =>
  to
    .part('load', name, { currentA }, { name: `Load ${name}` })
    .join('G1.+', `${name}.+`, THIN)
    .join(`${name}.-`, stud, THIN)

export function stepOf(of: Design, key: string): TestStep {
  const step = commissioningSteps(of).find((s) => s.key === key)
  if (!step)
    throw new Error(
      `no step ${key}: ${commissioningSteps(of)
        .map((s) => s.key)
        .join(', ')}`,
    )
  return step
}

export const stepAt = (of: Design, group: string, part: string, device: string): TestStep =>
  stepOf(of, `${group}/${partNamed(of, part).id}${device === '' ? '' : `/${device}`}`)

export function figureOf({ readings }: TestStep, key: string) {
  const reading = readings.find((r: Reading) => r.key === key)
  if (reading?.expected.is !== 'figure')
    throw new Error(`${key} expects ${JSON.stringify(reading?.expected)}`)
  return reading.expected
}

export function readingIn(of: Design, step: string, reading: string): ReadingRecord {
  const found = commissioningRecord(of)
    .groups.flatMap((g) => g.steps)
    .find((s) => s.step.key === step)
    ?.readings.find((r) => r.reading.key === reading)
  if (!found) throw new Error(`no reading ${step} ${reading}`)
  return found
}
