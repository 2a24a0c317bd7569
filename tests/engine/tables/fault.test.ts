import { describe, expect, test } from 'vitest'
import { clearsWithin, FUSE_TIMES, holdsFor } from '../../../engine/tables/fusetimes'
import { withstandK, withstandSeconds, withstandSection } from '../../../engine/tables/withstand'

const near = (actual: number, wanted: number, share: number): void => {
  expect(Math.abs(actual - wanted) / wanted).toBeLessThanOrEqual(share)
}

describe('adiabatic law', () => {
  // Tabulated k of IEC 60364-4-43 table 43A (BS 7671): PVC 70 → 160 °C, 90 → 250 °C, rubber 60 → 200 and 85 → 220 °C.
  test.each([
    [70, 160, 115],
    [90, 160, 100],
    [90, 250, 143],
    [60, 200, 141],
    [85, 220, 134],
    [180, 350, 132],
  ])('k from %d to %d °C is %d', (from, to, k) => {
    near(withstandK(from, to), k, 0.005)
  })

  // Two published cable-sizing notes: 10 kA for 0.4 s with k 115, 55 mm²; 12 kA for 0.02 s with k 143, 11.9 mm².
  test.each([
    [115, 10_000, 0.4, 55],
    [143, 12_000, 0.02, 11.9],
  ])('k %d, %d A, %d s: %d mm²', (k, amps, seconds, mm2) => {
    near(withstandSection(k, amps, seconds), mm2, 0.005)
    near(withstandSeconds(k, withstandSection(k, amps, seconds), amps), seconds, 1e-9)
  })

  // Worked from the same law: 35 mm², 5 kA, k 143: 1.002 s; 16 mm², 3 kA, k 115: 0.376 s.
  test('how long a conductor bears a fault', () => {
    near(withstandSeconds(143, 35, 5000), 1.002, 0.005)
    near(withstandSeconds(115, 16, 3000), 0.376, 0.005)
  })
})

describe('operating times', () => {
  // DIN 72581-3 form E, published window: 1.35 In 60 s to 30 min; 2 In 2 to 60 s; 3.5 In 0.2 to 7 s; 1 In over 100 h.
  test('large blade fuse of 60 A', () => {
    expect(clearsWithin('e', 60, 81)).toBe(1800)
    expect(clearsWithin('e', 60, 120)).toBe(60)
    expect(clearsWithin('e', 60, 209)).toBe(60)
    expect(clearsWithin('e', 60, 210)).toBe(7)
    expect(clearsWithin('e', 60, 80)).toBeNull()
    expect(holdsFor('e', 60, 60)).toBe(360_000)
    expect(holdsFor('e', 60, 100)).toBe(2)
    expect(holdsFor('e', 60, 300)).toBe(0)
  })

  test('a class without published limits gives none', () => {
    expect([clearsWithin('sf30', 60, 600), holdsFor('toString', 60, 600)]).toEqual([undefined, undefined])
  })

  test('gates narrow as the current grows, and only confirmed figures pass as such', () => {
    for (const [key, { gates, confirmed }] of Object.entries(FUSE_TIMES)) {
      expect(confirmed).toBe(key === 'e')
      for (let i = 1; i < gates.length; i++) {
        expect(gates[i]!.times).toBeGreaterThan(gates[i - 1]!.times)
        expect(gates[i]!.least).toBeLessThan(gates[i - 1]!.least)
        expect(gates[i]!.most!).toBeLessThanOrEqual(gates[i - 1]!.most ?? Number.POSITIVE_INFINITY)
      }
      for (const g of gates) expect(g.most ?? Number.POSITIVE_INFINITY).toBeGreaterThan(g.least)
    }
  })
})
