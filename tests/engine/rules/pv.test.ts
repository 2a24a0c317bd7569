import { describe, expect, test } from 'vitest'
import type { Values } from '../../../engine/model/fields'
import {
  PV_CONTINUOUS,
  PV_IRRADIANCE,
  stringBackfeedA,
  stringFuseRange,
} from '../../../engine/tables/pvfactors'
import type { JoinWords } from '../../build'
import { bench, findings, told } from './bench'

const PV = ['V1', 'V2', 'V3', 'V4', 'V5', 'V6']

/** The bench with an array and its controller, which feeds the block's third way. */
const array = (values: Values = {}, controller: Values = {}, run: JoinWords = {}) =>
  bench({
    parts: {
      F2: {
        ways: [
          { ratingA: 10, label: 'Lamp' },
          { ratingA: 15, label: 'Pump' },
          { ratingA: 20, label: 'Solar' },
        ],
      },
    },
  })
    .part('pv-array', 'G5', {
      series: 1,
      parallel: 2,
      vocV: 22,
      iscA: 8.8,
      vmpV: 18.5,
      impA: 8.2,
      vocPerKelvin: -0.3,
      maxFuseA: 15,
      ...values,
    })
    .part('solar-controller', 'T5', { outputA: 15, pvMaxV: 75, pvMaxA: 30, ...controller })
    .join('G5.+', 'T5.pv+', { number: 'W11', size: '4mm2', lengthM: 4, ...run })
    .join('G5.-', 'T5.pv-', { number: 'W12', size: '4mm2', lengthM: 4 })
    .join('T5.bat+', 'F2.3', { number: 'W13', size: '4mm2', lengthM: 1 })
    .join('T5.bat-', 'G1.-', { number: 'W14', size: '4mm2', lengthM: 1 })

test('the array as it is gives none', () => {
  expect(told(array(), ...PV)).toEqual([])
})

describe('factors', () => {
  // homepower.com, "PV Circuit Sizing": Isc 8.8 A → 11 A, and times 1.25 again 13.75 A.
  test('8.8 A: 11 A, then 13.75 A', () => {
    expect(8.8 * PV_IRRADIANCE).toBeCloseTo(11, 9)
    expect(8.8 * PV_IRRADIANCE * PV_CONTINUOUS).toBeCloseTo(13.75, 9)
  })

  // solarsaarthi.com, worked example after IEC 62548: 4 strings of 12.28 A push 36.84 A, more than the 20 A that the module
  // bears; the fuse lies above 18.42 and below 29.47 A, and at 20 A at most.
  test('4 strings of 12.28 A: 36.84 A, fuse above 18.42 A and below 29.47 A', () => {
    expect(stringBackfeedA(4, 12.28)).toBeCloseTo(36.84, 9)
    expect(stringFuseRange(12.28).above).toBeCloseTo(18.42, 9)
    expect(stringFuseRange(12.28).below).toBeCloseTo(29.47, 2)
  })
})

// The method of NFPA 70 690.7: 22.0 V, −0.30 %/K, −5 °C: 23.98 V.
test('V1: cold voltage of a string', () => {
  expect(told(array({}, { pvMaxV: 23.9 }), 'V1')).toEqual(['V1 danger T5'])
  expect(told(array({}, { pvMaxV: 24 }), 'V1')).toEqual([])
  // Without a coefficient, table 690.7(A) at −5 °C, from memory: × 1.12, 24.64 V.
  expect(told(array({ vocPerKelvin: null }, { pvMaxV: 24.6 }), 'V1')).toEqual(['V1 danger T5'])
  expect(told(array({ vocPerKelvin: null }, { pvMaxV: 24.7 }), 'V1')).toEqual([])
})

describe('V2, hot voltage', () => {
  // By hand: 18.5 V − 22 V · 0.30 % · 45 K = 15.53 V at 70 °C.
  test('the least voltage of the controller, or that of the charged battery', () => {
    expect(told(array({}, { pvMinV: 15.6 }), 'V2')).toEqual(['V2 warning G5 T5'])
    expect(told(array({}, { pvMinV: 15.5 }), 'V2')).toEqual([])
    expect(told(array({ vmpV: 17 }), 'V2')).toEqual(['V2 warning G5 T5'])
  })
})

describe('V3, string fuses', () => {
  const four = { parallel: 4, iscA: 12.28, impA: 11.5, maxFuseA: 20 }
  const wide: JoinWords = { size: '16mm2' }
  const strings = (values: Values) => told(array({ ...four, ...values }, { pvMaxA: 60 }, wide), 'V3')

  test('the worked example of four strings: needed, then 20 A, then one out of range', () => {
    expect(strings({})).toEqual(['V3 danger G5'])
    expect(strings({ stringFuseA: 20 })).toEqual([])
    expect(strings({ stringFuseA: 15 })).toEqual(['V3 warning G5'])
    expect(strings({ stringFuseA: 25 })).toEqual(['V3 danger G5'])
  })

  test('two strings need none where the module bears the current of one', () => {
    expect(told(array({ maxFuseA: 8.8 }), 'V3')).toEqual([])
    expect(told(array({ maxFuseA: 8.7 }), 'V3')).toEqual(['V3 danger G5'])
  })

  test('strings of another array beside it count, unless a fuse keeps them off', () => {
    const beside = (own: Values) =>
      array({ parallel: 1 }, { pvMaxA: 60 }, wide)
        .part('pv-array', 'G6', {
          series: 1,
          parallel: 2,
          vocV: 22,
          iscA: 8.8,
          vmpV: 18.5,
          impA: 8.2,
          maxFuseA: 30,
          ...own,
        })
        .join('G6.+', 'T5.pv+', { number: 'W15', size: '6mm2', lengthM: 4 })
        .join('G6.-', 'T5.pv-', { number: 'W16', size: '6mm2', lengthM: 4 })
    expect(told(beside({}), 'V3')).toEqual(['V3 danger G5'])
    expect(told(beside({ parallel: 1 }), 'V3')).toEqual([])
  })
})

describe('V4, conductors of an array', () => {
  // 1.5625 · 17.6 A = 27.5 A. DIN ISO 6722-3: 2.5 mm² carries 32 A, two circuits bunched 25.6 A (IEC 60364-5-52, 0.8).
  test('1.56 times the short-circuit current', () => {
    expect(told(array({}, {}, { size: '2.5mm2' }), 'V4')).toEqual([])
    expect(told(array({}, {}, { size: '2.5mm2', bunched: 4 }), 'V4', 'C1')).toEqual(['V4 warning W11'])
  })

  test('C1 tells it where it does not even carry 1.25 times', () => {
    expect(told(array({}, {}, { size: '1mm2' }), 'V4', 'C1')).toEqual(['C1 danger W11'])
  })
})

test('V5: short-circuit current at the controller', () => {
  expect(told(array({}, { pvMaxA: 17.5 }), 'V5')).toEqual(['V5 warning T5 G5'])
  expect(told(array({}, { pvMaxA: 17.6 }), 'V5')).toEqual([])
})

describe('two arrays in series, each a part of its own', () => {
  const module = { vocV: 22, vmpV: 18.5, impA: 8.2, vocPerKelvin: -0.3, maxFuseA: 15 }
  const inSeries = (iscA: number, controller: Values) =>
    bench()
      .part('pv-array', 'G5', { ...module, iscA })
      .part('pv-array', 'G6', { ...module, iscA: 12 })
      .part('solar-controller', 'T5', { outputA: 15, pvMaxV: 75, ...controller })
      .join('G5.+', 'T5.pv+', { size: '4mm2', lengthM: 4 })
      .join('G6.+', 'G5.-', { size: '4mm2', lengthM: 1 })
      .join('G6.-', 'T5.pv-', { size: '4mm2', lengthM: 4 })
      .join('T5.bat+', 'F1.2', { size: '4mm2', lengthM: 1 })
      .join('T5.bat-', 'G1.-', { size: '4mm2', lengthM: 1 })

  test('V5: the same current passes both, and counts once', () => {
    expect(told(inSeries(12, { pvMaxA: 10 }), 'V5')).toEqual(['V5 warning T5 G6 G5'])
    expect(told(inSeries(12, { pvMaxA: 12 }), 'V5')).toEqual([])
    expect(told(inSeries(8.8, { pvMaxA: 8.8 }), 'V5')).toEqual([])
  })

  // 2 · 15.53 V at 70 °C (above); 2 · 23.98 V at −5 °C.
  test('V1 and V2: their voltages add up', () => {
    expect(told(inSeries(8.8, { pvMinV: 31.1 }), 'V2')).toEqual(['V2 warning G6 G5 T5'])
    expect(told(inSeries(8.8, { pvMinV: 31 }), 'V2')).toEqual([])
    expect(told(inSeries(8.8, { pvMaxV: 47.9 }), 'V1')).toEqual(['V1 danger T5'])
    expect(told(inSeries(8.8, { pvMaxV: 48 }), 'V1')).toEqual([])
  })
})

describe('V6, an array with no controller', () => {
  const straight = (to: string) =>
    array()
      .part('pv-array', 'G6', { vocV: 22, iscA: 3, vmpV: 18.5, impA: 2.8, vocPerKelvin: -0.3, maxFuseA: 15 })
      .join('G6.+', to, { number: 'W15', size: '4mm2', lengthM: 1 })
      .join('G6.-', 'G1.-', { number: 'W16', size: '4mm2', lengthM: 1 })

  test('straight on the battery, and on the input of a controller', () => {
    expect(told(straight('F1.2'), 'V6')).toEqual(['V6 danger G6'])
    expect(told(straight('T5.pv+'), 'V6')).toEqual([])
  })

  test('what it puts on everything there: 22 V · (1 + 0.30 % · 30 K) at −5 °C', () => {
    const [finding] = findings(straight('F1.2').build(), 'V6')
    expect(finding?.actual?.value).toBeCloseTo(23.98, 9)
    expect(finding?.limit?.value).toBe(12)
  })
})
