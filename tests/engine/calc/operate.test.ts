import { describe, expect, it } from 'vitest'
import { operate } from '../../../engine/calc/operate'
import type { OperatingPoint, OperatingState } from '../../../engine/calc/operating/state'
import { NOTHING_SET } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import type { Design } from '../../../engine/model/design'
import { conductorNumbered, type DesignBuilder, design, partNamed } from '../../build'
import { certificate } from '../../reference/balance'

/** Size and length that give 0.0399 Ω of copper: 5 m of 2.5 mm² at 7.98 Ω/km, IEC 60228 as restated in public. */
const FIVE_METRES = { size: '2.5mm2', lengthM: 5 } as const
/** The same with its two terminations of 20 µΩ (common practice, no source). */
const OHMS = 0.0399 + 2 * 0.00002

/** LiFePO4 of 12 V, full: 13.4 V at rest (common practice, no source) behind 4 mΩ. */
const withBattery = (): DesignBuilder =>
  design({ systemV: 12 }).part('battery', 'G1', {
    capacityAh: 100,
    dischargeA: 100,
    chargeA: 50,
    internalMOhm: 4,
  })

const withLoad = (values: Parameters<DesignBuilder['part']>[2]): Design =>
  withBattery()
    .part('load', 'E1', values)
    .join('G1.+', 'E1.+', FIVE_METRES)
    .join('E1.-', 'G1.-', FIVE_METRES)
    .build()

function point(d: Design, state: Partial<OperatingState> = {}): OperatingPoint {
  const answer = operate(d, { ...usualState(d), ...state })
  if (!answer.ok) throw new Error(answer.reason)
  const { kirchhoff, ohm, power } = certificate(d, answer)
  expect(kirchhoff).toBeLessThan(1e-6)
  expect(ohm).toBeLessThan(1e-6)
  expect(power).toBeLessThan(1e-6)
  return answer
}

const id = (d: Design, part: string, key: string): string => `${partNamed(d, part).id}/${key}`
const device = (d: Design, p: OperatingPoint, part: string, key = 'load') => p.devices.get(id(d, part, key))!
const notes = (d: Design, p: OperatingPoint): string[] =>
  p.notes.map((n) => [n.note, ...n.parts.map((x) => d.parts.find((y) => y.id === x)!.designation)].join(' '))

describe('one load on one battery, by hand', () => {
  it('a constant current drops R · I', () => {
    const d = withLoad({ currentA: 10 })
    const p = point(d)
    expect(device(d, p, 'E1').amps).toBeCloseTo(-10, 12)
    expect(device(d, p, 'E1').volts).toBeCloseTo(13.4 - 10 * (0.004 + 2 * OHMS), 9)
    expect(device(d, p, 'G1', 'cells').volts).toBeCloseTo(13.36, 9)
    expect(p.conductors.get(conductorNumbered(d, 'W1').id)).toBeCloseTo(10, 9)
    expect(p.power.ways).toBeCloseTo(100 * 2 * OHMS, 9)
    expect(p.volts.get(id(d, 'E1', '-'))).toBeCloseTo(10 * OHMS, 9)
    expect(p.notes).toEqual([])
  })

  it('a constant power takes the upper root of its quadratic', () => {
    const d = withLoad({ powerW: 120, nature: 'power' })
    const ohms = 0.004 + 2 * OHMS
    const volts = 6.7 + Math.sqrt(6.7 ** 2 - 120 * ohms)
    expect(device(d, point(d), 'E1').volts).toBeCloseTo(volts, 8)
    expect(device(d, point(d), 'E1').watts).toBeCloseTo(-120, 8)
  })

  it('a resistance of 12 V and 10 A is 1.2 Ω; at half use it is twice that', () => {
    const d = withLoad({ currentA: 10, nature: 'resistance' })
    const ohms = 0.004 + 2 * OHMS
    expect(device(d, point(d), 'E1').amps).toBeCloseTo(-13.4 / (1.2 + ohms), 9)
    const half = point(d, { loads: new Map([[id(d, 'E1', 'load'), 0.5]]) })
    expect(device(d, half, 'E1').amps).toBeCloseTo(-13.4 / (2.4 + ohms), 9)
  })

  it('the rest voltage follows the state of charge in straight lines', () => {
    const d = withLoad({ currentA: 0 })
    const at = (charge: number) =>
      device(d, point(d, { charge: new Map([[id(d, 'G1', 'cells'), charge]]) }), 'G1', 'cells').volts
    // Common practice, no source: 13.1 V at a half, 12.8 V at a tenth, 10 V at nothing, for four cells.
    expect(at(0.5)).toBeCloseTo(13.1, 9)
    expect(at(0.05)).toBeCloseTo(11.4, 9)
    expect(at(0)).toBeCloseTo(10, 9)
    expect(at(7)).toBeCloseTo(13.4, 9)
  })

  it('a load at no use draws nothing', () => {
    const d = withLoad({ currentA: 10 })
    const p = point(d, { loads: new Map([[id(d, 'E1', 'load'), 0]]) })
    expect(device(d, p, 'E1')).toEqual({ amps: 0, volts: 13.4, watts: 0 })
  })
})

describe('contacts and fuses', () => {
  const d = withBattery()
    .part('fuse-blade', 'F1', { ratingA: 10 })
    .part('panel-switch', 'S1', { ratingA: 16 })
    .part('load', 'E1', { currentA: 5 })
    .part('load', 'E2', { currentA: 2, nature: 'resistance' })
    .join('G1.+', 'F1.1', FIVE_METRES)
    .join('F1.2', 'S1.1', FIVE_METRES)
    .join('S1.2', 'E1.+', FIVE_METRES)
    .join('S1.2', 'E2.+', FIVE_METRES)
    .join('E1.-', 'G1.-', FIVE_METRES)
    .join('E2.-', 'G1.-', FIVE_METRES)
    .build()

  it.each([
    ['an open switch', { open: new Set([id(d, 'S1', 'contact')]) }],
    ['a fuse that is out', { blown: new Set([id(d, 'F1', 'link')]) }],
  ])('%s leaves 0 V and 0 A, and is no note', (_, state) => {
    const p = point(d, state)
    for (const load of ['E1', 'E2']) {
      expect(device(d, p, load).amps).toBeCloseTo(0, 12)
      expect(device(d, p, load).volts).toBeCloseTo(0, 12)
    }
    expect(p.branches.get(id(d, 'S1', 'contact'))).toBe(0)
    expect(notes(d, p)).toEqual([])
  })

  it('says when a fuse carries more than its rating', () => {
    const more = {
      ...d,
      parts: d.parts.map((x) =>
        x.designation === 'E1' ? { ...x, values: { ...x.values, currentA: 12 } } : x,
      ),
    }
    const p = point(more)
    expect(notes(more, p)).toEqual(['above-rating F1'])
    expect(p.notes[0]).toMatchObject({ limitA: 10 })
    expect(p.notes[0]!.amps).toBeCloseTo(12 + -device(more, p, 'E2').amps, 9)
  })
})

describe('what is missing or wrong is said, and left out', () => {
  it('a design without a battery has no operating point', () => {
    expect(operate(design().part('load', 'E1', { currentA: 1 }).build(), NOTHING_SET)).toEqual({
      ok: false,
      reason: 'no-battery',
      parts: [],
    })
  })

  it('lists loads without a figure, loads that nothing feeds, and a battery without resistance', () => {
    const d = design()
      .part('battery', 'G1', { capacityAh: 100 })
      .part('load', 'E1')
      .part('load', 'E2', { currentA: 3 })
      .part('load', 'E3', { currentA: 4 })
      .join('G1.+', 'E1.+', FIVE_METRES)
      .join('E1.-', 'G1.-', FIVE_METRES)
      .join('G1.+', 'E3.+')
      .join('E3.-', 'G1.-', FIVE_METRES)
      .build()
    const p = point(d)
    expect(notes(d, p)).toEqual([
      'no-battery-feeds E2',
      'missing-figure E1',
      'typical-resistance G1',
      'missing-run',
    ])
    expect(device(d, p, 'E3').amps).toBe(-4)
    // 5 mΩ stands in for a 12 V battery (common practice, no source).
    expect(device(d, p, 'G1', 'cells').volts).toBeCloseTo(13.4 - (4 * (0.005 * 13.4)) / 12, 9)
  })

  it('a load wired backwards draws nothing, a resistance draws all the same', () => {
    const backwards = (nature: string) =>
      withBattery()
        .part('load', 'E1', { currentA: 5, nature })
        .join('G1.+', 'E1.-', FIVE_METRES)
        .join('E1.+', 'G1.-', FIVE_METRES)
        .build()
    const current = backwards('current')
    expect(device(current, point(current), 'E1').amps).toBe(0)
    expect(notes(current, point(current))).toEqual(['reversed E1'])
    const heater = backwards('resistance')
    expect(device(heater, point(heater), 'E1').amps).toBeGreaterThan(5)
    expect(notes(heater, point(heater))).toEqual([])
  })

  it('stops what asks for more than its loop can pass, and leaves the rest running', () => {
    // The most that 13.4 V passes through 0.0838 Ω is 13.4²/(4 · 0.0838) = 535 W.
    const d = withBattery()
      .part('load', 'E1', { powerW: 540, nature: 'power' })
      .part('load', 'E2', { currentA: 1 })
      .join('G1.+', 'E1.+', FIVE_METRES)
      .join('E1.-', 'G1.-', FIVE_METRES)
      .join('G1.+', 'E2.+', FIVE_METRES)
      .join('E2.-', 'G1.-', FIVE_METRES)
      .build()
    const p = point(d)
    expect(notes(d, p)).toEqual(['starved E1'])
    expect(device(d, p, 'E1').amps).toBe(0)
    expect(device(d, p, 'E2').amps).toBe(-1)
    // 100 A through the same loop would leave 5 V of 13.4 V.
    const thick = withLoad({ currentA: 100 })
    expect(notes(thick, point(thick))).toEqual(['starved E1'])
  })

  it('says when a battery goes past its limits', () => {
    const d = withBattery()
      .part('battery', 'G2', { capacityAh: 100, dischargeA: 100, chargeA: 1, internalMOhm: 4 })
      .join('G1.+', 'G2.+', FIVE_METRES)
      .join('G1.-', 'G2.-', FIVE_METRES)
      .build()
    const p = point(d, { charge: new Map([[id(d, 'G2', 'cells'), 0.1]]) })
    // 13.4 V against 12.8 V through 2 · 0.004 Ω + the two conductors.
    expect(device(d, p, 'G1', 'cells').amps).toBeCloseTo(0.6 / (0.008 + 2 * OHMS), 9)
    expect(notes(d, p)).toEqual(['charge-limit G2'])
  })
})

describe('a load-side shunt', () => {
  const metered = (back: string): Design =>
    withBattery()
      .part('shunt', 'B1', { role: 'battery', ratingA: 100, millivolts: 50 })
      .part('shunt', 'B2', { role: 'load', ratingA: 100, millivolts: 50 })
      .part('load', 'E1', { currentA: 5 })
      .part('load', 'E2', { currentA: 8 })
      .join('G1.-', 'B1.b', FIVE_METRES)
      .join('B1.s', 'B2.b', FIVE_METRES)
      .join('G1.+', 'E1.+', FIVE_METRES)
      .join('E1.-', 'B2.s', FIVE_METRES)
      .join('G1.+', 'E2.+', FIVE_METRES)
      .join('E2.-', back, FIVE_METRES)
      .build()

  it('shows what its loads draw', () => {
    const d = metered('B2.s')
    const { shunts } = point(d)
    for (const b of ['B1', 'B2']) {
      expect(shunts.get(partNamed(d, b).id)!.shows).toBeCloseTo(13, 9)
      expect(shunts.get(partNamed(d, b).id)!.off).toBeCloseTo(0, 9)
    }
  })

  it('shows less by what passes it by', () => {
    const d = metered('B1.s')
    const shunt = point(d).shunts.get(partNamed(d, 'B2').id)!
    expect(shunt.shows).toBeCloseTo(5, 9)
    expect(shunt.truth).toBeCloseTo(13, 9)
    expect(shunt.off).toBeCloseTo(-8, 9)
  })
})
