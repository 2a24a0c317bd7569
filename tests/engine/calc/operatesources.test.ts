import { describe, expect, it } from 'vitest'
import { operate } from '../../../engine/calc/operate'
import type { ChargeStage } from '../../../engine/calc/operating/charging'
import type { OperatingPoint } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import type { Design } from '../../../engine/model/design'
import { type DesignBuilder, design, partNamed } from '../../build'
import { certificate } from '../../reference/balance'

/** 0.0399 Ω and its two terminations of 20 µΩ: 5 m of 2.5 mm², IEC 60228 as restated in public. */
const RUN = { size: '2.5mm2', lengthM: 5 } as const
const OHMS = 0.0399 + 2 * 0.00002

/** No voltage to speak of is lost in it. */
const THICK = { size: '50mm2', lengthM: 1 } as const

const withBattery = (more: Parameters<DesignBuilder['part']>[2] = {}): DesignBuilder =>
  design({ systemV: 12 }).part('battery', 'G1', { capacityAh: 100, internalMOhm: 4, ...more })

const id = (d: Design, part: string, key: string): string => `${partNamed(d, part).id}/${key}`
const device = (d: Design, p: OperatingPoint, part: string, key: string) => p.devices.get(id(d, part, key))!
const notes = (d: Design, p: OperatingPoint): string[] =>
  p.notes.map((n) => [n.note, ...n.parts.map((x) => d.parts.find((y) => y.id === x)!.designation)].join(' '))

/** `sources` by "part/device". */
function point(d: Design, sources: Readonly<Record<string, number>> = {}, open: readonly string[] = []) {
  const state = usualState(d)
  const ids = Object.entries(sources).map(([key, share]) => {
    const [part, name] = key.split('/')
    return [id(d, part!, name!), share] as const
  })
  const answer = operate(d, {
    ...state,
    sources: new Map([...state.sources, ...ids]),
    open: new Set([...state.open, ...open.map((s) => id(d, s, 'contact'))]),
  })
  if (!answer.ok) throw new Error(answer.reason)
  const { kirchhoff, ohm, power } = certificate(d, answer)
  expect(kirchhoff).toBeLessThan(1e-6)
  expect(ohm).toBeLessThan(1e-6)
  expect(power).toBeLessThan(1e-6)
  return answer
}

const MODULE = { moduleW: 100, vocV: 22, iscA: 6, vmpV: 18, impA: 5.55 }

const solar = (controller: Parameters<DesignBuilder['part']>[2] = {}): Design =>
  withBattery()
    .part('pv-array', 'G2', { ...MODULE, series: 2, parallel: 1 })
    .part('solar-controller', 'T1', { outputA: 30, efficiency: 95, ...controller })
    .join('G2.+', 'T1.pv+', RUN)
    .join('G2.-', 'T1.pv-', RUN)
    .join('T1.bat+', 'G1.+', RUN)
    .join('T1.bat-', 'G1.-', RUN)
    .build()

describe('a solar controller', () => {
  it('passes on what the array gives in the sun, less the loss in its leads, times its efficiency', () => {
    const d = solar()
    const p = point(d, { 'G2/array': 0.5 })
    const array = device(d, p, 'G2', 'array')
    // Half of two modules of 100 W; the array is held at 2 · 18 V, of which a thousandth is lost inside it.
    expect(array.watts).toBeCloseTo(100, 4)
    expect(array.volts).toBeCloseTo(36, 1)
    const input = 100 - array.amps ** 2 * 2 * OHMS
    expect(-device(d, p, 'T1', 'input').watts).toBeCloseTo(input, 4)
    const output = device(d, p, 'T1', 'output')
    expect(output.watts).toBeCloseTo(0.95 * input, 4)
    // V² − V·(emf) − P·(R) = 0 at its terminals: battery of 13.4 V behind 4 mΩ and two conductors.
    const r = 0.004 + 2 * OHMS
    expect(output.volts).toBeCloseTo(6.7 + Math.sqrt(6.7 ** 2 + output.watts * r), 8)
    expect(device(d, p, 'G1', 'cells').amps).toBeCloseTo(-output.amps, 9)
  })

  it('gives its limit and takes less from the array, where the array could give more', () => {
    const d = solar({ outputA: 10 })
    const p = point(d, { 'G2/array': 1 })
    expect(device(d, p, 'T1', 'output').amps).toBe(10)
    const volts = 13.4 + 10 * (0.004 + 2 * OHMS)
    expect(-device(d, p, 'T1', 'input').watts).toBeCloseTo((10 * volts) / 0.95, 6)
    expect(device(d, p, 'G2', 'array').watts).toBeLessThan(200)
  })

  it('of the kind that joins array and battery passes the current', () => {
    const d = solar({ method: 'pwm' })
    const p = point(d, { 'G2/array': 1 })
    expect(device(d, p, 'T1', 'output').amps).toBeCloseTo(200 / 36, 9)
  })

  it('without sun or without a battery gives nothing', () => {
    const d = solar()
    expect(device(d, point(d), 'T1', 'output').amps).toBe(0)
    const open = withBattery()
      .part('pv-array', 'G2', { ...MODULE })
      .part('solar-controller', 'T1', { outputA: 30 })
      .join('G2.+', 'T1.pv+', RUN)
      .join('G2.-', 'T1.pv-', RUN)
      .build()
    const p = point(open, { 'G2/array': 1 })
    expect(device(open, p, 'T1', 'output').amps).toBe(0)
    expect(notes(open, p)).toEqual(['nothing-to-charge T1'])
  })

  it('shares an array with another by their limits', () => {
    const d = withBattery()
      .part('pv-array', 'G2', { ...MODULE, parallel: 2 })
      .part('solar-controller', 'T1', { outputA: 30 })
      .part('solar-controller', 'T2', { outputA: 10 })
      .join('G2.+', 'T1.pv+', RUN)
      .join('G2.-', 'T1.pv-', RUN)
      .join('G2.+', 'T2.pv+', RUN)
      .join('G2.-', 'T2.pv-', RUN)
      .join('T1.bat+', 'G1.+', RUN)
      .join('T1.bat-', 'G1.-', RUN)
      .join('T2.bat+', 'G1.+', RUN)
      .join('T2.bat-', 'G1.-', RUN)
      .build()
    const p = point(d, { 'G2/array': 1 })
    const [a, b] = ['T1', 'T2'].map((t) => device(d, p, t, 'output').watts)
    expect(a! / b!).toBeCloseTo(3, 9)
    expect(device(d, p, 'G2', 'array').watts).toBeCloseTo(200, 2)
    expect(notes(d, p)).toEqual(['shared-array T1 T2'])
  })

  it('without an array says so', () => {
    const d = withBattery()
      .part('solar-controller', 'T1', { outputA: 30 })
      .join('T1.bat+', 'G1.+', RUN)
      .join('T1.bat-', 'G1.-', RUN)
      .build()
    expect(notes(d, point(d))).toEqual(['no-array T1'])
  })
})

describe('chargers', () => {
  it('a mains charger gives its limit times its use, while a battery is joined', () => {
    const d = withBattery({ chargeA: 10 })
      .part('mains-charger', 'T1', { outputA: 20 })
      .part('isolator', 'Q1', { ratingA: 100 })
      .part('load', 'E1', { currentA: 2 })
      .join('T1.+', 'Q1.1', THICK)
      .join('Q1.2', 'G1.+', THICK)
      .join('T1.-', 'G1.-', THICK)
      .join('T1.+', 'E1.+', THICK)
      .join('E1.-', 'T1.-', THICK)
      .build()
    const half = point(d, { 'T1/output': 0.5 })
    expect(device(d, half, 'G1', 'cells').amps).toBeCloseTo(-8, 9)
    expect(notes(d, half)).toEqual(['full-current T1'])
    const full = point(d, { 'T1/output': 1 })
    expect(notes(d, full)).toEqual(['charge-limit G1', 'full-current T1'])
    expect(full.notes[0]).toMatchObject({ limitA: 10 })
    const apart = point(d, { 'T1/output': 1 }, ['Q1'])
    expect(device(d, apart, 'E1', 'load').amps).toBe(0)
    expect(notes(d, apart)).toEqual(['nothing-to-charge T1'])
  })

  it('an alternator charger runs with the alternator, and draws for its output', () => {
    const d = withBattery()
      .part('starting-battery', 'G2', { capacityAh: 80, internalMOhm: 5 })
      .part('alternator', 'G3', { ratedA: 90 })
      .part('alternator-charger', 'T1', { outputA: 30, efficiency: 90 })
      .join('G3.+', 'G2.+', THICK)
      .join('G3.-', 'G2.-', THICK)
      .join('G2.+', 'T1.in+', THICK)
      .join('T1.-', 'G2.-', THICK)
      .join('T1.out+', 'G1.+', THICK)
      .join('G1.-', 'G2.-', THICK)
      .build()
    expect(device(d, point(d), 'T1', 'output').amps).toBe(0)
    const p = point(d, { 'G3/output': 1 })
    const output = device(d, p, 'T1', 'output')
    expect(output.amps).toBe(30)
    expect(-device(d, p, 'T1', 'input').watts).toBeCloseTo(output.watts / 0.9, 6)
    expect(p.power.converters).toBeCloseTo(output.watts / 0.9 - output.watts, 6)
  })

  describe('in a stage', () => {
    /** A battery at 12.9 V for its charge, a charger of 20 A on leads of next to nothing, and a load of 6 A at the battery. */
    const staged = (values: Readonly<Record<string, number>> = {}): Design =>
      withBattery()
        .part('mains-charger', 'T1', { outputA: 20, ...values })
        .part('load', 'E1', { currentA: 6 })
        .join('T1.+', 'G1.+', THICK)
        .join('T1.-', 'G1.-', THICK)
        .join('G1.+', 'E1.+', THICK)
        .join('E1.-', 'G1.-', THICK)
        .build()
    const at = (d: Design, stage: ChargeStage, loads = 1): OperatingPoint => {
      const usual = usualState(d)
      const answer = operate(d, {
        ...usual,
        sources: new Map([[id(d, 'T1', 'output'), 1]]),
        loads: new Map([[id(d, 'E1', 'load'), loads]]),
        stages: new Map([[id(d, 'T1', 'output'), stage]]),
      })
      if (!answer.ok) throw new Error(answer.reason)
      expect(certificate(d, answer).kirchhoff).toBeLessThan(1e-6)
      expect(certificate(d, answer).power).toBeLessThan(1e-6)
      return answer
    }

    it('gives its full current in bulk', () => {
      const d = staged()
      const p = at(d, 'bulk')
      expect(device(d, p, 'T1', 'output').amps).toBe(20)
      expect(device(d, p, 'G1', 'cells').amps).toBeCloseTo(-14, 9)
      expect(notes(d, p)).toEqual(['full-current T1'])
    })

    it.each([
      ['absorption', 14.4],
      ['float', 13.6],
    ] as const)(
      'holds its voltage in %s, carries the loads, and the battery takes next to nothing',
      (stage, volts) => {
        const d = staged()
        const p = at(d, stage)
        // The load's 6 A and no more than 0.1 A.
        expect(device(d, p, 'T1', 'output').amps).toBeGreaterThan(6)
        expect(device(d, p, 'T1', 'output').amps).toBeLessThan(6.11)
        expect(device(d, p, 'T1', 'output').volts).toBeGreaterThan(volts - 0.015)
        expect(device(d, p, 'T1', 'output').volts).toBeLessThanOrEqual(volts)
        expect(notes(d, p)).toEqual(['holds-voltage T1', 'taken-as-full G1', 'typical-charge-voltage T1'])
      },
    )

    it('holds the voltage that is typed', () => {
      const d = staged({ absorptionV: 14.2, floatV: 13.5 })
      expect(device(d, at(d, 'float', 0), 'T1', 'output').volts).toBeCloseTo(13.5, 2)
      expect(device(d, at(d, 'absorption', 0), 'T1', 'output').volts).toBeCloseTo(14.2, 2)
      expect(notes(d, at(d, 'float'))).toEqual(['holds-voltage T1', 'taken-as-full G1'])
    })

    it('gives its full current where the loads ask for more, and the battery the rest under its rest voltage', () => {
      const d = staged()
      const more = {
        ...d,
        parts: d.parts.map((x) =>
          x.designation === 'E1' ? { ...x, values: { ...x.values, currentA: 50 } } : x,
        ),
      }
      const p = at(more, 'float')
      expect(device(more, p, 'T1', 'output').amps).toBe(20)
      expect(device(more, p, 'G1', 'cells').amps).toBeCloseTo(30, 6)
      expect(device(more, p, 'G1', 'cells').volts).toBeCloseTo(13.4 - 30 * 0.004, 6)
    })

    it('a bank in series shares the voltage that is held', () => {
      const d = design({ systemV: 24 })
        .part('battery', 'G1', { capacityAh: 100, internalMOhm: 4 })
        .part('battery', 'G2', { capacityAh: 100, internalMOhm: 4 })
        .part('mains-charger', 'T1', { outputA: 20 })
        .join('G2.-', 'G1.+', THICK)
        .join('T1.+', 'G2.+', THICK)
        .join('T1.-', 'G1.-', THICK)
        .build()
      const answer = operate(d, {
        ...usualState(d),
        sources: new Map([[id(d, 'T1', 'output'), 1]]),
        stages: new Map([[id(d, 'T1', 'output'), 'float']]),
      })
      if (!answer.ok) throw new Error(answer.reason)
      for (const g of ['G1', 'G2']) expect(device(d, answer, g, 'cells').volts).toBeCloseTo(13.6, 2)
    })

    it('a solar controller in float takes no more of the sun than is drawn', () => {
      const d = solar()
      const usual = usualState(d)
      const answer = operate(d, {
        ...usual,
        sources: new Map([[id(d, 'G2', 'array'), 1]]),
        stages: new Map([[id(d, 'T1', 'output'), 'float']]),
      })
      if (!answer.ok) throw new Error(answer.reason)
      expect(certificate(d, answer).power).toBeLessThan(1e-6)
      expect(device(d, answer, 'G2', 'array').watts).toBeLessThan(2)
      expect(notes(d, answer)).toContain('holds-voltage T1')
    })
  })

  it('an inverter-charger draws without mains and charges with it', () => {
    const d = withBattery()
      .part('inverter-charger', 'T1', { powerW: 900, efficiency: 90, chargeA: 40 })
      .join('G1.+', 'T1.+', { size: '50mm2', lengthM: 1 })
      .join('T1.-', 'G1.-', { size: '50mm2', lengthM: 1 })
      .build()
    expect(device(d, point(d), 'T1', 'battery-side').watts).toBeCloseTo(-1000, 8)
    expect(device(d, point(d, { 'T1/battery-side': 0.5 }), 'T1', 'battery-side').amps).toBe(20)
  })
})

describe('a step-down converter', () => {
  const stepped = (isolated: boolean): Design =>
    design({ systemV: 24 })
      .part('battery', 'G1', { capacityAh: 100, volts: '24', internalMOhm: 8 })
      .part('step-down', 'T1', { outputA: 10, outputV: 12, efficiency: 90, isolated })
      .part('load', 'E1', { currentA: 8 })
      .join('G1.+', 'T1.in+', RUN)
      .join(isolated ? 'T1.in-' : 'T1.-', 'G1.-', RUN)
      .join('T1.out+', 'E1.+', RUN)
      .join('E1.-', isolated ? 'T1.out-' : 'T1.-', RUN)
      .build()

  it.each([
    ['with one negative', false],
    ['isolated', true],
  ])('%s holds its voltage and draws for it', (_, isolated) => {
    const d = stepped(isolated)
    const p = point(d)
    // It holds 12 V less a thousandth at its full current.
    const volts = 12 - 0.012 * 0.8
    expect(device(d, p, 'T1', 'output').volts).toBeCloseTo(volts, 9)
    expect(device(d, p, 'E1', 'load').volts).toBeCloseTo(volts - 8 * 2 * OHMS, 9)
    const watts = (8 * volts) / 0.9
    const r = 0.008 + 2 * OHMS
    const input = 13.4 + Math.sqrt(13.4 ** 2 - watts * r)
    expect(device(d, p, 'T1', 'input').volts).toBeCloseTo(input, 8)
    expect(device(d, p, 'T1', 'input').amps).toBeCloseTo(-watts / input, 8)
    if (isolated) expect(p.volts.get(id(d, 'T1', 'out-'))).toBe(0)
  })

  it('stops with all behind it where its input gets too little', () => {
    const d = design({ systemV: 24 })
      .part('battery', 'G1', { capacityAh: 100, volts: '24', internalMOhm: 8 })
      .part('step-down', 'T1', { outputA: 60, outputV: 12, efficiency: 90 })
      .part('load', 'E1', { currentA: 50 })
      .part('load', 'E2', { currentA: 1 })
      .join('G1.+', 'T1.in+', { size: '1.5mm2', lengthM: 12 })
      .join('T1.-', 'G1.-', { size: '1.5mm2', lengthM: 12 })
      .join('T1.out+', 'E1.+', { size: '50mm2', lengthM: 1 })
      .join('E1.-', 'T1.-', { size: '50mm2', lengthM: 1 })
      .join('G1.+', 'E2.+', RUN)
      .join('E2.-', 'G1.-', RUN)
      .build()
    // It asks for some 660 W; the most that 26.8 V passes through 0.33 Ω is 544 W (13.3 Ω/km, IEC 60228 as restated).
    const p = point(d)
    expect(notes(d, p)).toEqual(['starved T1'])
    expect(device(d, p, 'E1', 'load').amps).toBe(0)
    expect(device(d, p, 'E2', 'load').amps).toBe(-1)
  })

  it('says when it is asked for more than its limit, and when its efficiency is missing', () => {
    const d = stepped(false)
    const set = (part: string, values: Readonly<Record<string, number | null>>): Design => ({
      ...d,
      parts: d.parts.map((x) => (x.designation === part ? { ...x, values: { ...x.values, ...values } } : x)),
    })
    const more = set('E1', { currentA: 11 })
    expect(notes(more, point(more))).toEqual(['converter-limit T1'])
    const unknown = set('T1', { efficiency: null })
    expect(notes(unknown, point(unknown))).toEqual(['no-battery-feeds E1', 'missing-figure T1'])
  })
})
