import { describe, expect, it } from 'vitest'
import { operate } from '../../../engine/calc/operate'
import type { OperatingPoint, OperatingState } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import type { Design } from '../../../engine/model/design'
import { type DesignBuilder, design, partNamed } from '../../build'

const RUN = { size: '6mm2', lengthM: 1 } as const

const withBattery = (): DesignBuilder =>
  design({ systemV: 12 }).part('battery', 'G1', { capacityAh: 100, internalMOhm: 4 })

const id = (d: Design, part: string, key: string): string => `${partNamed(d, part).id}/${key}`

function point(d: Design, state: OperatingState): OperatingPoint {
  const answer = operate(d, state)
  if (!answer.ok) throw new Error(answer.reason)
  return answer
}

/** The state with the switches named open, and all others closed. */
function switched(d: Design, state: OperatingState, ...open: string[]): OperatingState {
  const switches = d.parts.filter((p) => p.kind === 'panel-switch').map((p) => `${p.id}/contact`)
  const ids = new Set(open.map((s) => id(d, s, 'contact')))
  return { ...state, open: new Set([...[...state.open].filter((x) => !switches.includes(x)), ...ids]) }
}

const amps = (d: Design, p: OperatingPoint, part: string): number => p.devices.get(id(d, part, 'load'))!.amps
const notes = (p: OperatingPoint): string[] => p.notes.map((n) => n.note)

describe('a relay with a make contact', () => {
  const d = withBattery()
    .part('relay', 'K1', { ratingA: 30, coilA: 0.15 })
    .part('panel-switch', 'S1', { ratingA: 6 })
    .part('pump', 'M1', { currentA: 6 })
    .join('G1.+', 'K1.30', RUN)
    .join('G1.+', 'S1.1', RUN)
    .join('S1.2', 'K1.86', RUN)
    .join('K1.85', 'G1.-', RUN)
    .join('K1.87', 'M1.+', RUN)
    .join('M1.-', 'G1.-', RUN)
    .build()

  it('follows the switch of its coil, both ways', () => {
    const on = usualState(d)
    expect(amps(d, point(d, on), 'M1')).toBe(-6)
    const off = point(d, switched(d, on, 'S1'))
    expect(amps(d, off, 'M1')).toBe(0)
    expect(off.relays.get(id(d, 'K1', 'coil'))).toBe(false)
    expect(off.state.open).toEqual(new Set([id(d, 'S1', 'contact'), id(d, 'K1', '30-87')]))
    expect(amps(d, point(d, switched(d, off.state)), 'M1')).toBe(-6)
  })

  it('draws its coil current at 12 V, and more above', () => {
    const coil = point(d, usualState(d)).devices.get(id(d, 'K1', 'coil'))!
    expect(-coil.amps / coil.volts).toBeCloseTo(0.15 / 12, 12)
  })

  it('pulls in above seven tenths of its voltage only', () => {
    // Common practice, no source. Each coil of 80 Ω; a lamp as resistance in its feed takes part of the voltage.
    const behind = (ohms: number) =>
      withBattery()
        .part('lamp', 'E1', { currentA: 12 / ohms, nature: 'resistance' })
        .part('relay', 'K1', { ratingA: 30, coilA: 0.15 })
        .join('G1.+', 'E1.+', RUN)
        .join('E1.-', 'K1.86', RUN)
        .join('K1.85', 'G1.-', RUN)
        .build()
    const fed = (d: Design) => point(d, usualState(d)).relays.get(id(d, 'K1', 'coil'))
    // 13.4 V · 80 / (80 + 40) = 8.93 V of 8.4 V; with 60 Ω 7.66 V.
    expect(fed(behind(40))).toBe(true)
    expect(fed(behind(60))).toBe(false)
    // Once pulled in, it lets go under a tenth only.
    const held = (d: Design) =>
      point(d, { ...usualState(d), open: new Set() }).relays.get(id(d, 'K1', 'coil'))
    expect(held(behind(60))).toBe(true)
    expect(held(behind(1000))).toBe(false)
  })

  it('in the 12 V side of a 24 V system is a 12 V relay', () => {
    const d24 = design({ systemV: 24 })
      .part('battery', 'G1', { capacityAh: 100, volts: '24', internalMOhm: 8 })
      .part('step-down', 'T1', { outputA: 10, outputV: 12 })
      .part('relay', 'K1', { ratingA: 30, coilA: 0.15 })
      .join('G1.+', 'T1.in+', RUN)
      .join('T1.-', 'G1.-', RUN)
      .join('T1.out+', 'K1.86', RUN)
      .join('K1.85', 'G1.-', RUN)
      .build()
    expect(point(d24, usualState(d24)).relays.get(id(d24, 'K1', 'coil'))).toBe(true)
  })
})

describe('relays that work each other', () => {
  it('one behind the other come to stand in turn', () => {
    const d = withBattery()
      .part('panel-switch', 'S1', { ratingA: 6 })
      .part('relay', 'K1', { ratingA: 30 })
      .part('relay', 'K2', { ratingA: 30 })
      .part('lamp', 'E1', { currentA: 3 })
      .join('G1.+', 'S1.1', RUN)
      .join('S1.2', 'K1.86', RUN)
      .join('K1.85', 'G1.-', RUN)
      .join('G1.+', 'K1.30', RUN)
      .join('K1.87', 'K2.86', RUN)
      .join('K2.85', 'G1.-', RUN)
      .join('G1.+', 'K2.30', RUN)
      .join('K2.87', 'E1.+', RUN)
      .join('E1.-', 'G1.-', RUN)
      .build()
    const on = usualState(d)
    expect(amps(d, point(d, on), 'E1')).toBe(-3)
    expect(amps(d, point(d, switched(d, on, 'S1')), 'E1')).toBe(0)
  })

  it('a relay that holds itself stays after its button is let go, and falls with the stop button', () => {
    const d = withBattery()
      .part('panel-switch', 'S1', { ratingA: 6 })
      .part('panel-switch', 'S2', { ratingA: 6 })
      .part('relay', 'K1', { ratingA: 30 })
      .part('lamp', 'E1', { currentA: 3 })
      .join('G1.+', 'S2.1', RUN)
      .join('S2.2', 'S1.1', RUN)
      .join('S1.2', 'K1.86', RUN)
      .join('S2.2', 'K1.30', RUN)
      .join('K1.87', 'K1.86', RUN)
      .join('K1.87', 'E1.+', RUN)
      .join('E1.-', 'G1.-', RUN)
      .join('K1.85', 'G1.-', RUN)
      .build()
    const pressed = point(d, usualState(d))
    const let1 = point(d, switched(d, pressed.state, 'S1'))
    expect(amps(d, let1, 'E1')).toBe(-3)
    const stopped = point(d, switched(d, let1.state, 'S1', 'S2'))
    expect(amps(d, stopped, 'E1')).toBe(0)
    const again = point(d, switched(d, stopped.state, 'S1'))
    expect(amps(d, again, 'E1')).toBe(0)
  })

  it('a relay that cuts its own coil chatters', () => {
    const d = withBattery()
      .part('relay-changeover', 'K1', { ratingA: 30, breakRatingA: 20 })
      .join('G1.+', 'K1.30', RUN)
      .join('K1.87a', 'K1.86', RUN)
      .join('K1.85', 'G1.-', RUN)
      .build()
    expect(operate(d, usualState(d))).toEqual({
      ok: false,
      reason: 'relays-chatter',
      parts: [partNamed(d, 'K1').id],
    })
  })

  it('two that lock each other out do not chatter: one of them wins', () => {
    let b = withBattery()
    for (const k of ['K1', 'K2'])
      b = b.part('relay-changeover', k, { ratingA: 30, breakRatingA: 20 }).join('G1.+', `${k}.30`, RUN)
    const d = b
      .join('K1.87a', 'K2.86', RUN)
      .join('K2.87a', 'K1.86', RUN)
      .join('K1.85', 'G1.-', RUN)
      .join('K2.85', 'G1.-', RUN)
      .build()
    const p = point(d, usualState(d))
    expect([...p.relays.values()].filter(Boolean)).toHaveLength(1)
  })
})

describe('a changeover relay', () => {
  const d = withBattery()
    .part('relay-changeover', 'K1', { ratingA: 30, breakRatingA: 20 })
    .part('panel-switch', 'S1', { ratingA: 6 })
    .part('lamp', 'E1', { currentA: 2 })
    .part('lamp', 'E2', { currentA: 3 })
    .join('G1.+', 'K1.30', RUN)
    .join('G1.+', 'S1.1', RUN)
    .join('S1.2', 'K1.86', RUN)
    .join('K1.85', 'G1.-', RUN)
    .join('K1.87a', 'E1.+', RUN)
    .join('K1.87', 'E2.+', RUN)
    .join('E1.-', 'G1.-', RUN)
    .join('E2.-', 'G1.-', RUN)
    .build()

  it('feeds one or the other', () => {
    const fed = point(d, usualState(d))
    expect([amps(d, fed, 'E1'), amps(d, fed, 'E2')]).toEqual([0, -3])
    expect(fed.state.throws).toEqual(new Map([[id(d, 'K1', '30'), '87']]))
    const rest = point(d, switched(d, fed.state, 'S1'))
    expect([amps(d, rest, 'E1'), amps(d, rest, 'E2')]).toEqual([-2, 0])
    expect(rest.state.throws).toEqual(new Map([[id(d, 'K1', '30'), '87a']]))
  })
})

describe('a latching relay', () => {
  const d = withBattery()
    .part('relay-latching', 'K1', { ratingA: 100 })
    .part('panel-switch', 'S1', { ratingA: 6 })
    .part('panel-switch', 'S2', { ratingA: 6 })
    .part('lamp', 'E1', { currentA: 2 })
    .join('G1.+', 'K1.30', RUN)
    .join('K1.87', 'E1.+', RUN)
    .join('E1.-', 'G1.-', RUN)
    .join('G1.+', 'S1.1', RUN)
    .join('S1.2', 'K1.close', RUN)
    .join('G1.+', 'S2.1', RUN)
    .join('S2.2', 'K1.open', RUN)
    .join('K1.85', 'G1.-', RUN)
    .build()

  it('stays as the last pulse left it', () => {
    const opened = point(d, switched(d, usualState(d), 'S1'))
    expect(amps(d, opened, 'E1')).toBe(0)
    const idle = point(d, switched(d, opened.state, 'S1', 'S2'))
    expect(amps(d, idle, 'E1')).toBe(0)
    const closed = point(d, switched(d, idle.state, 'S2'))
    expect(amps(d, closed, 'E1')).toBe(-2)
    expect(closed.relays.get(id(d, 'K1', 'close'))).toBe(true)
    expect(amps(d, point(d, switched(d, closed.state, 'S1', 'S2')), 'E1')).toBe(-2)
  })

  it('stays as it is and says so while both coils are fed', () => {
    const both = point(d, usualState(d))
    expect(amps(d, both, 'E1')).toBe(-2)
    expect(notes(both)).toEqual(['both-coils'])
  })
})

describe('contacts that work by voltage', () => {
  const cutOut = (thresholds: { opensV?: number; closesV?: number }) =>
    withBattery()
      .part('low-voltage-cut-out', 'K1', { ratingA: 60, ...thresholds })
      .part('load', 'E1', { currentA: 20 })
      .join('G1.+', 'K1.1', RUN)
      .join('K1.31', 'G1.-', RUN)
      .join('K1.2', 'E1.+', RUN)
      .join('E1.-', 'G1.-', RUN)
      .build()
  const at = (d: Design, state: OperatingState, charge: number): OperatingPoint =>
    point(d, { ...state, charge: new Map([[id(d, 'G1', 'cells'), charge]]) })

  it('a cut-out opens at a low and closes again at a higher voltage only', () => {
    const d = cutOut({ opensV: 11.5, closesV: 12.7 })
    const full = at(d, usualState(d), 1)
    expect(amps(d, full, 'E1')).toBe(-20)
    // 11.4 V at rest at a twentieth of charge.
    const low = at(d, full.state, 0.05)
    expect(amps(d, low, 'E1')).toBe(0)
    // 12.5 V or so at rest: between the two voltages it stays open, and would have stayed closed.
    expect(amps(d, at(d, low.state, 0.09), 'E1')).toBe(0)
    expect(amps(d, at(d, full.state, 0.09), 'E1')).toBe(-20)
    expect(amps(d, at(d, low.state, 0.2), 'E1')).toBe(-20)
  })

  it('without typed voltages it stays as set, and says so', () => {
    const d = cutOut({ opensV: 11.5 })
    const p = at(d, usualState(d), 1)
    expect(notes(p)).toEqual(['missing-threshold'])
    expect(amps(d, p, 'E1')).toBe(-20)
    expect(amps(d, at(d, p.state, 0), 'E1')).toBe(-20)
    const open = new Set([id(d, 'K1', 'contact')])
    expect(amps(d, at(d, { ...p.state, open }, 1), 'E1')).toBe(0)
  })

  it('a cut-out whose voltages contradict each other chatters', () => {
    const d = cutOut({ opensV: 13.35, closesV: 12 })
    expect(operate(d, usualState(d))).toMatchObject({ ok: false, reason: 'relays-chatter' })
  })

  it('a combiner joins two batteries while one is charged', () => {
    const d = design({ systemV: 12 })
      .part('battery', 'G1', { chemistry: 'agm', capacityAh: 100, internalMOhm: 4 })
      .part('starting-battery', 'G2', { capacityAh: 80, internalMOhm: 5 })
      .part('alternator', 'G3', { ratedA: 60 })
      .part('combiner', 'K1', { ratingA: 140, closesV: 13.5, opensV: 12.9 })
      .join('G3.+', 'G2.+', RUN)
      .join('G3.-', 'G2.-', RUN)
      .join('G2.+', 'K1.1', RUN)
      .join('K1.2', 'G1.+', RUN)
      .join('K1.31', 'G2.-', RUN)
      .join('G1.-', 'G2.-', RUN)
      .build()
    const half = new Map([
      [id(d, 'G1', 'cells'), 0.2],
      [id(d, 'G2', 'cells'), 0.8],
    ])
    const off = point(d, { ...usualState(d), charge: half })
    expect(off.branches.get(id(d, 'K1', 'contact'))).toBe(0)
    const running = point(d, { ...off.state, sources: new Map([[id(d, 'G3', 'output'), 1]]) })
    expect(running.state.open.size).toBe(0)
    expect(running.devices.get(id(d, 'G1', 'cells'))!.amps).toBeLessThan(0)
    const stopped = point(d, { ...running.state, sources: new Map() })
    expect(stopped.branches.get(id(d, 'K1', 'contact'))).toBe(0)
  })
})
