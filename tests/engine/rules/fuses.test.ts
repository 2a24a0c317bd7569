import { describe, expect, test } from 'vitest'
import { answersOf } from '../../../engine/calc/answersof'
import { bench, told } from './bench'

const FUSES = ['F2', 'F3', 'F4', 'F5', 'F6', 'B1']
const ways = (lamp: number | null, pump: number | null, third = true) => ({
  ways: [
    { ratingA: lamp, label: 'Lamp' },
    { ratingA: pump, label: 'Pump' },
    ...(third ? [{ ratingA: null, label: 'Spare' }] : []),
  ],
})

test('the bench as it is gives none', () => {
  expect(told(bench(), ...FUSES)).toEqual([])
})

describe('F2, starting currents', () => {
  const pump = (inrush: number, inrushS: number, F2 = {}) =>
    bench({ parts: { M1: { currentA: 8, inrush, inrushS }, F2 } })

  // Limits of ISO 8820-3, from memory: at 2 × its rating a blade fuse holds 0.15 s and opens within 5 s. 8 A × 3 are
  // 24 A through 15 A, 1.6 ×.
  test('held, perhaps held, surely not held', () => {
    expect(told(pump(3, 0.1), 'F2')).toEqual([])
    expect(told(pump(3, 1), 'F2')).toEqual(['F2 note F2 M1'])
    expect(told(pump(4, 6), 'F2')).toEqual(['F2 warning F2 M1'])
  })

  test('not checked for a class without limits, and only above the rating', () => {
    expect(told(pump(3, 1, { class: 'other' }), 'F2')).toEqual(['F2 not-checked F2 M1'])
    expect(told(pump(1.5, 1, { class: 'other' }), 'F2')).toEqual([])
    const point = { class: 'other', holdsTimes: 2, holdsS: 1, clearsTimes: 10, clearsS: 0.1 }
    expect(told(pump(3, 1, point), 'F2')).toEqual([])
    expect(told(pump(3, 2, point), 'F2')).toEqual(['F2 note F2 M1'])
  })

  test('what the battery may give for long does not hold back a start', () => {
    // The pump asks for 8 A, 32 A while it starts; the battery may give 4 A for long. 4 A + 24 A is too little.
    const weak = bench({ parts: { G1: { dischargeA: 4 }, M1: { currentA: 8, inrush: 4, inrushS: 1 } } })
    const starts = [...answersOf(weak.build()).answers.faults.starts.values()].flat()
    expect(starts.map((s) => s.amps)).toEqual([32, 32])
  })

  test('what starts adds to what runs in the device that carries both', () => {
    const both = (lamp: number) =>
      bench({
        parts: {
          F1: { ratingA: 30 },
          E1: { currentA: lamp },
          M1: { currentA: 8, inrush: 4, inrushS: 5 },
          F2: { ...ways(30, 40), wayMaxA: 40 },
        },
      })
    // SF51, from memory: at 1.35 × 30 A it holds 120 s, at 2 × only 1 s. The pump adds 24 A to 8 A and the lamp.
    expect(told(both(6), 'F2')).toEqual([])
    expect(told(both(16), 'F2')).toEqual(['F2 note F1 M1'])
  })
})

describe('F3, continuous use', () => {
  // NFPA 70 210.19, restated: a continuous load of 16 A wants a device of 20 A (16 × 1.25).
  const lamp = (currentA: number, more = {}) =>
    bench({ parts: { E1: { currentA, ...more }, F2: { ...ways(20, 15), wayMaxA: 20 } }, runs: wide })
  const wide = { W3: { size: '6mm2' }, W4: { size: '6mm2' } }

  test('16 A on 20 A is all that it bears', () => {
    expect(told(lamp(16), 'F3')).toEqual([])
    expect(told(lamp(16.1), 'F3')).toEqual(['F3 warning F2'])
  })

  test('not for what runs briefly, for devices of full duty, or beyond the rating, which F1 tells', () => {
    expect(told(lamp(18, { continuous: false }), 'F3')).toEqual([])
    const full = bench({
      parts: { E1: { currentA: 18 }, F2: { ...ways(20, 15), fullDuty: true } },
      runs: wide,
    })
    expect(told(full, 'F3')).toEqual([])
    expect(told(lamp(21), 'F1', 'F3')).toEqual(['F1 warning F2'])
  })
})

test('F4: a blade fuse of 12 A is none', () => {
  expect(told(bench({ parts: { F2: ways(12, 15) } }), 'F4')).toEqual(['F4 note F2'])
  expect(told(bench({ parts: { F2: ways(7.5, 15) } }), 'F4')).toEqual([])
})

test('F5: a larger fuse than the way may hold', () => {
  expect(told(bench({ parts: { F2: { wayMaxA: 10 } } }), 'F5')).toEqual(['F5 danger F2'])
  expect(told(bench({ parts: { F2: { wayMaxA: 15 } } }), 'F5')).toEqual([])
})

test('F6: all ways taken', () => {
  expect(told(bench({ parts: { F2: ways(10, 15, false) } }), 'F6')).toEqual(['F6 note F2'])
  expect(told(bench(), 'F6')).toEqual([])
})

test('B1: the rating of the block covers all its ways together', () => {
  expect(told(bench({ parts: { F2: { ratingA: 13 } } }), 'B1')).toEqual(['B1 danger F2'])
  expect(told(bench({ parts: { F2: { ratingA: 14 } } }), 'B1')).toEqual([])
})
