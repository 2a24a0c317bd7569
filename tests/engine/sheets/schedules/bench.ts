import type { Design } from '../../../../engine/index'
import { design } from '../../../build'

/** A small system whose schedules are worked out by hand in the tests. Invented. */
export function benchDesign(): Design {
  return design({ name: 'Bench', systemV: 12, ruleSet: 'metric-automotive', date: '2026-03-04' })
    .part(
      'battery',
      'G1',
      { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 },
      { name: 'House' },
    )
    .part('fuse-bolt-in', 'F1', { ratingA: 80, voltageV: 32, breakingKA: 2 })
    .part('fuse-block', 'F2', {
      ratingA: 100,
      ways: [
        { ratingA: 10, label: 'Pump' },
        { ratingA: 7.5, label: 'Lamp' },
        { ratingA: null, label: '' },
      ],
    })
    .part('relay', 'K1', { ratingA: 30, coilV: 12, coilA: 0.15 }, { name: 'Pump relay' })
    .part('panel-switch', 'S1', { ratingA: 6 }, { name: 'Pump switch' })
    .part('pump', 'M1', { currentA: 6 }, { name: 'Water pump', location: 'under bench' })
    .part('lamp', 'E1', { currentA: 2 }, { name: 'Lamp' })
    .part('busbar', 'W1', { studs: 3, pole: 'negative', ratingA: 150, stud: 'M6' }, { name: 'Return bar' })
    .join('G1.+', 'F1.1', { number: 'W2', size: '16mm2', lengthM: 0.2, colour: 'RD' })
    .join('F1.2', 'F2.in', { number: 'W3', size: '16mm2', lengthM: 1.5, colour: 'RD' })
    .join('F2.1', 'K1.30', { number: 'W4', size: '2.5mm2', lengthM: 4, colour: 'RD' })
    .join('K1.87', 'M1.+', { number: 'W5', size: '2.5mm2', lengthM: 12, colour: 'RD' })
    .join('M1.-', 'W1.1l', { number: 'W6', size: '2.5mm2', lengthM: 12, colour: 'BN', returnOf: 'W5' })
    .join('F2.2', 'E1.+', { number: 'W7', size: '2.5mm2', lengthM: 17, colour: 'RD' })
    .join('E1.-', 'W1.1r', { number: 'W8', size: '2.5mm2', lengthM: null, colour: 'BN', returnOf: 'W7' })
    .join('K1.30', 'S1.1', { number: 'W9', size: null, lengthM: 1, colour: 'RD' })
    .join('S1.2', 'K1.86', { number: 'W10', size: '2.5mm2', lengthM: 1, colour: 'RD' })
    .join('K1.85', 'W1.2l', { number: 'W11', size: '2.5mm2', lengthM: 31, colour: 'BN' })
    .join('G1.-', 'W1.3l', { number: 'W12', size: '16mm2', lengthM: 1, colour: 'BN', remark: '=1+1' })
    .build()
}
