import { describe, expect, it } from 'vitest'
import { analyse } from '../../../engine/index'
import { design } from '../../build'

// Common practice, no source: a load behind a converter is counted where the converter's input returns.
describe('how a conductor counts', () => {
  const base = design({ systemV: 24, ruleSet: 'metric-automotive' })
    .part('battery', 'G1', { volts: '24', capacityAh: 100, dischargeA: 100, chargeA: 50 })
    .part('shunt', 'B1', { role: 'load', ratingA: 200 })
    .part('busbar', 'W91', { pole: 'negative', ratingA: 200 })
    .part('busbar', 'W92', { pole: 'negative', ratingA: 200 })
    .part('step-down', 'T1', { outputA: 20 })
    .part('load', 'E1', { currentA: 5, ratedV: 12 })
    .part('load', 'E2', { currentA: 4 })
    .join('G1.-', 'W91.1l', { size: '35mm2', lengthM: 1 })
    .join('W91.2l', 'B1.b', { size: '35mm2', lengthM: 1 })
    .join('B1.s', 'W92.1l', { size: '35mm2', lengthM: 1 })
    .join('G1.+', 'T1.in+', { size: '35mm2', lengthM: 1 })
    .join('G1.+', 'E2.+', { size: '35mm2', lengthM: 1 })
    .join('E2.-', 'W92.3r', { size: '35mm2', lengthM: 1 })
    .join('T1.out+', 'E1.+', { size: '6mm2', lengthM: 1, number: 'W100' })
  const metered = (bar: string): string | null | undefined => {
    const d = base
      .join('T1.-', `${bar}.2r`, { size: '35mm2', lengthM: 1 })
      .join('E1.-', `${bar}.3l`, { size: '6mm2', lengthM: 1 })
      .build()
    const run = d.conductors.find((c) => c.number === 'W100')!
    return analyse(d).answers.runs.get(run.id)?.metered
  }

  it('a load behind a converter is measured when the converter returns behind the load-side shunt', () =>
    expect(metered('W92')).toBe('measured'))

  it('and bypasses it when the converter does', () => expect(metered('W91')).toBe('bypasses'))
})
