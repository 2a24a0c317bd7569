import { describe, expect, test } from 'vitest'
import { clearsBy, fuseBand, holdsAtLeast } from '../../../engine/tables/fuseband'

const none = { holds: null, clears: null }

describe('band of a fuse', () => {
  // DIN 72581-3 form E, published window: 1.35 In 60 s to 30 min; 2 In 2 to 60 s; 3.5 In 0.2 to 7 s.
  test('is the published window between its gates', () => {
    const band = fuseBand('e', 60, none)!
    expect([80, 81, 119, 120, 209, 210].map((amps) => clearsBy(band, amps))).toEqual([
      null,
      1800,
      1800,
      60,
      60,
      7,
    ])
    expect([60, 61, 120, 121, 211].map((amps) => holdsAtLeast(band, amps))).toEqual([360_000, 60, 2, 0.2, 0])
    expect(band.confirmed).toBe(true)
  })

  test('beyond the last gate lets no more I²t through than there', () => {
    const band = fuseBand('e', 60, none)!
    for (const amps of [211, 500, 5000])
      expect(clearsBy(band, amps)! * amps ** 2).toBeCloseTo(7 * 210 ** 2, 6)
  })

  test("a maker's points stand over the published gates", () => {
    const band = fuseBand('e', 60, {
      holds: { times: 2, seconds: 10 },
      clears: { times: 2.5, seconds: 5 },
    })!
    expect(holdsAtLeast(band, 100)).toBe(10)
    expect(holdsAtLeast(band, 81)).toBe(60)
    expect(clearsBy(band, 149)).toBe(60)
    expect(clearsBy(band, 150)).toBe(5)
    expect(clearsBy(band, 210)).toBe(5)
    expect(band.source).toBe('rating')
  })

  test('of a class without limits there is one only from points, and none beyond them', () => {
    expect(fuseBand('t', 100, none)).toBeNull()
    expect(fuseBand('toString', 100, none)).toBeNull()
    const band = fuseBand('t', 100, { holds: null, clears: { times: 4, seconds: 1 } })!
    expect([clearsBy(band, 399), clearsBy(band, 400), clearsBy(band, 800)]).toEqual([null, 1, 0.25])
    expect(holdsAtLeast(band, 200)).toBe(0)
  })

  test('only ever narrows as the current grows', () => {
    for (const c of ['c', 'e', 'f', 'sf51', 'other'])
      for (const times of [1.2, 2, 3, 5, 9]) {
        const band = fuseBand(c, 10, {
          holds: { times, seconds: 3 },
          clears: { times: times + 1, seconds: 4 },
        })!
        for (let amps = 5; amps < 150; amps += 0.5) {
          expect(holdsAtLeast(band, amps + 0.5)).toBeLessThanOrEqual(holdsAtLeast(band, amps))
          expect(clearsBy(band, amps + 0.5) ?? 1e9).toBeLessThanOrEqual(clearsBy(band, amps) ?? 1e9)
        }
      }
  })
})
