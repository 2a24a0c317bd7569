import { describe, expect, test } from 'vitest'
import { COPPER_OHM_MM2_PER_M } from '../../../engine/tables/copper'
import { resistancePerMetre } from '../../../engine/tables/resistance'
import { SIZES, sizeByKey, sizesOf } from '../../../engine/tables/sizes'

/** Largest difference as a share of what is wanted. */
const within = (actual: number | undefined, wanted: number, share: number): void => {
  expect(actual).toBeDefined()
  expect(Math.abs(actual! - wanted) / wanted).toBeLessThanOrEqual(share)
}

describe('American wire gauge', () => {
  // ASTM B258 (law of diameters): d = 0.127 mm · 92^((36 − n)/39).
  const diameterMm = (gauge: string): number => {
    const n = gauge.includes('/') ? 1 - Number(gauge[0]) : Number(gauge)
    return 0.127 * 92 ** ((36 - n) / 39)
  }

  test.each(sizesOf('awg').map((s) => [s.key, s] as const))(
    '%s follows the law in section and resistance',
    (key, size) => {
      const d = diameterMm(key.replace('awg', ''))
      const mm2 = (Math.PI * d * d) / 4
      within(size.sectionMm2, mm2, 0.001)
      within(size.ohmsPerKm, (1000 * COPPER_OHM_MM2_PER_M) / mm2, 0.001)
    },
  )

  // Published table of copper wire (NBS Handbook 100, restated in public tables): Ω for 1000 ft at 20 °C.
  test.each([
    ['4/0awg', 0.04901],
    ['10awg', 0.9989],
    ['18awg', 6.385],
  ])('%s has the published resistance for 1000 ft', (key, ohmsPerKft) => {
    within(resistancePerMetre(key, 20)! * 304.8, ohmsPerKft, 0.001)
  })

  // Published AWG chart: 10 AWG, 3.855 Ω/km at 65 °C.
  test('resistance rises with temperature as published', () => {
    within(resistancePerMetre('10awg', 65)! * 1000, 3.855, 0.002)
  })
})

describe('metric sizes', () => {
  // IEC 60228 class 5, plain copper, largest resistance at 20 °C, Ω/km (three public restatements agree).
  test.each([
    ['1mm2', 19.5],
    ['2.5mm2', 7.98],
    ['6mm2', 3.3],
    ['16mm2', 1.21],
    ['35mm2', 0.554],
    ['70mm2', 0.272],
    ['120mm2', 0.161],
  ])('%s has the class 5 resistance', (key, ohmsPerKm) => {
    expect(resistancePerMetre(key, 20)! * 1000).toBeCloseTo(ohmsPerKm, 10)
  })

  // IEC 60228 annex: a resistance measured at 70 °C times 0.833 is that at 20 °C.
  test('25 mm² at 70 °C agrees with the correction of IEC 60228', () => {
    within(resistancePerMetre('25mm2', 70)! * 1000, 0.78 / 0.833, 0.005)
  })

  // Worked from IEC 60228: 2.5 mm², 10 A, 5 m out and 5 m back lose 0.798 V.
  test('a run of 2.5 mm² loses what its table resistance says', () => {
    within(resistancePerMetre('2.5mm2', 20)! * 10 * 10, 0.798, 0.005)
  })

  // IEC 60228 defines a nominal section by resistance: the copper behind it is less, as makers of cable explain.
  test('the copper that the resistance shows is never more than the nominal section', () => {
    for (const s of sizesOf('metric'))
      expect((1000 * COPPER_OHM_MM2_PER_M) / s.ohmsPerKm).toBeLessThan(s.sectionMm2 * 1.0001)
  })
})

describe('auto cable of Australia', () => {
  // Published strandings of two trade charts: 26 and 41 and 65 strands of 0.30 mm.
  test.each([
    ['4auto', 26],
    ['5auto', 41],
    ['6auto', 65],
  ])('%s is named by diameter and holds the copper of its strands', (key, strands) => {
    within(sizeByKey(key)!.sectionMm2, (strands * Math.PI * 0.3 ** 2) / 4, 0.005)
    expect(sizeByKey(key)!.sectionMm2).toBeLessThan(Number.parseFloat(key) * 0.8)
  })

  // Public cable chart: 3 mm, 14 strands of 0.32 mm, about 1.125 mm². Two charts disagree, so it is not confirmed.
  test('3 mm auto is 1.13 mm² and marked', () => {
    within(sizeByKey('3auto')!.sectionMm2, (14 * Math.PI * 0.32 ** 2) / 4, 0.005)
    expect(sizeByKey('3auto')!.confirmed).toBe(false)
  })

  // Published B&S figures: 8 B&S 7.91 mm² against 8.37 mm² of the gauge.
  test('B&S cable as sold holds less copper than the gauge', () => {
    expect(sizeByKey('8bs')!.sectionMm2).toBe(7.91)
    expect(resistancePerMetre('8bs', 20)!).toBeGreaterThan(resistancePerMetre('8awg', 20)!)
  })
})

test('keys are unique, and each series grows in copper and falls in resistance', () => {
  expect(new Set(SIZES.map((s) => s.key)).size).toBe(SIZES.length)
  for (const series of ['metric', 'awg', 'auto', 'bs-au'] as const) {
    const sizes = sizesOf(series)
    for (let i = 1; i < sizes.length; i++) {
      expect(sizes[i]!.sectionMm2).toBeGreaterThan(sizes[i - 1]!.sectionMm2)
      expect(sizes[i]!.ohmsPerKm).toBeLessThan(sizes[i - 1]!.ohmsPerKm)
    }
  }
})

test('a size that is not in the catalogue has no resistance', () => {
  expect(resistancePerMetre('7mm2', 20)).toBeUndefined()
  expect(resistancePerMetre('__proto__', 20)).toBeUndefined()
})
