import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { NetworkDevice, NetworkForm } from '../../../engine/calc/form'
import { loadFlow } from '../../../engine/calc/loadflow'
import { upTo } from '../../../engine/calc/operating/charging'
import type { Operations } from '../../../engine/calc/operation'
import { prepare } from '../../../engine/calc/prepare'
import { stretchAt } from '../../../engine/calc/stretches'
import { operatingCase } from '../../reference/ngspice/cases'
import { CHARGING_SEEDS, chargingCase } from '../../reference/ngspice/charging'
import { type Case, hasNgspice, simulate } from '../../reference/ngspice/deck'

const solved = (form: NetworkForm, operations: Operations = new Map()) => {
  const answer = loadFlow(prepare(form), operations)
  if ('reason' in answer) throw new Error(`${answer.reason}: ${answer.devices.join(', ')}`)
  return answer
}

/** Largest difference, V, between our voltages and the simulator's, each counted from the case's own grounds. */
function worstDifference(c: Case, volts: readonly number[]): number {
  const p = prepare(c.form)
  const answer = solved(c.form, new Map(c.operations))
  const zero = new Map(
    c.grounds.map((id) => {
      const v = p.nodeIndex.get(id)!
      return [answer.group[v]!, answer.voltage[v]!]
    }),
  )
  expect(volts.length).toBe(c.form.nodes.length)
  return volts.reduce(
    (worst, v, i) => Math.max(worst, Math.abs(answer.voltage[i]! - zero.get(answer.group[i]!)! - v)),
    0,
  )
}

/** A battery and one device at the far end of 5 m of 2.5 mm² conductor and back, 7.98 Ω/km. */
function loop(device: Partial<NetworkDevice>, ohms = 0.0399): NetworkForm {
  return {
    nodes: ['b+', 'b-', 'l+', 'l-'],
    branches: [
      { id: 'out', from: 'b+', to: 'l+', resistance: ohms, kind: 'conductor' },
      { id: 'back', from: 'l-', to: 'b-', resistance: ohms, kind: 'conductor' },
    ],
    devices: [
      {
        id: 'battery',
        positive: 'b+',
        negative: 'b-',
        min: 0,
        max: 100,
        sustainedFault: 'unlimited',
        emf: 12,
        internalResistance: 1e-9,
      },
      { id: 'load', positive: 'l+', negative: 'l-', min: -10, max: 0, sustainedFault: 0, ...device },
    ],
  }
}

describe('load flow against a circuit simulator', () => {
  const folder = new URL('../../reference/ngspice/', import.meta.url)
  const stored = readdirSync(folder).filter((name) => /^(operating|charging)-.*\.json$/.test(name))

  it('has stored cases', () => {
    expect(stored.length).toBeGreaterThanOrEqual(4 + CHARGING_SEEDS.length)
  })

  it.each(stored)('gives the stored voltages of %s to 1e-6 V', (name) => {
    const c = JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as Case & { volts: number[] }
    expect(worstDifference(c, c.volts)).toBeLessThan(1e-6)
  })

  it.skipIf(!hasNgspice())('gives the voltages of a run made now, on 25 systems, to 1e-6 V', () => {
    for (let seed = 1; seed <= 25; seed++) {
      const c = operatingCase(seed, 4 + 3 * seed)
      expect(worstDifference(c, simulate(c))).toBeLessThan(1e-6)
    }
  })
})

describe('chargers in their stages', () => {
  const cases = CHARGING_SEEDS.map((seed) => chargingCase(seed, 6))

  it('come to work in every stretch: fully, holding their voltage, and at rest above it', () => {
    const found = new Set<string>()
    for (const c of cases) {
      const p = prepare(c.form)
      const { voltage } = solved(c.form, new Map(c.operations))
      for (const [id, o] of c.operations) {
        if (!('stretches' in o)) continue
        const d = p.deviceIndex.get(id)!
        const at = stretchAt(o.stretches, voltage[p.positive[d]!]! - voltage[p.negative[d]!]!)
        found.add(`${id.startsWith('bank') || id.startsWith('low') ? 'battery' : 'charger'} ${at}`)
      }
    }
    expect([...found]).toEqual(expect.arrayContaining(['charger 0', 'charger 1', 'charger 2', 'battery 1']))
    expect(new Set(cases.map((c) => c.name.split(',')[1])).size).toBe(3)
  })

  it.skipIf(!hasNgspice()).each(cases.map((c) => [c.name, c] as const))(
    '%s: the voltages of a run made now, to 1e-6 V',
    (_, c) => {
      expect(worstDifference(c, simulate(c))).toBeLessThan(1e-6)
    },
  )

  it('balance at every node in 200 systems, whatever the stage', () => {
    for (let seed = 500; seed < 700; seed++) {
      const c = chargingCase(seed, 4 + (seed % 30))
      expect(solved(c.form, new Map(c.operations)).residual).toBeLessThan(1e-6)
    }
  })

  it('give their current up to their voltage, and then what holds it, by Ohm’s law', () => {
    const form = loop({ min: 0, max: 30 }, 0.05)
    const battery = { ...form.devices[0]!, emf: 13.2, internalResistance: 1e-9 }
    const ampsOf = (amps: number): number => {
      const operations = new Map([['load', { stretches: upTo(14.4, { amps }) }]])
      return solved({ ...form, devices: [battery, form.devices[1]!] }, operations).deviceAmps[1]!
    }
    // 3 A through 0.1 Ω need 13.5 V of 14.4 V.
    expect(ampsOf(3)).toBeCloseTo(3, 9)
    // 30 A would need 16.2 V: what flows is 14.4 V less 13.2 V over 0.1 Ω and the 0.48 mΩ behind which it is held.
    expect(ampsOf(30)).toBeCloseTo(1.2 / (0.1 + 0.00048), 6)
  })
})

describe('load flow against worked examples', () => {
  // Class 5 conductor, 2.5 mm², 5 m each way, 10 A: 0.798 V, 6.65 % of 12 V. Resistance 7.98 Ω/km at 20 °C:
  // IEC 60228 table of flexible conductors, as restated by cable makers; the product is Ohm's law.
  it('drops 0.798 V over 5 m of 2.5 mm² and back at 10 A', () => {
    const { voltage } = solved(loop({}))
    expect(12 - (voltage[2]! - voltage[3]!)).toBeCloseTo(0.798, 3)
  })

  // A shunt of 100 A / 50 mV shows 10 mV at 20 A (scaling as published by a maker of shunts).
  it('shows 10 mV over a 100 A, 50 mV shunt at 20 A', () => {
    const form = loop({ min: -20 }, 1e-3)
    const shunt = { ...form.branches[1]!, kind: 'shunt' as const, resistance: 0.05 / 100 }
    const { voltage, branchAmps } = solved({ ...form, branches: [form.branches[0]!, shunt] })
    expect(voltage[3]! - voltage[1]!).toBeCloseTo(0.01, 9)
    expect(branchAmps[1]).toBeCloseTo(20, 9)
  })

  it('solves a constant-power load as its quadratic does', () => {
    const { voltage, deviceAmps } = solved(loop({}), new Map([['load', { watts: -120 }]]))
    // V² − 12·V + 120·0.0798 = 0, the upper root.
    const v = 6 + Math.sqrt(36 - 120 * 0.0798)
    expect(voltage[2]! - voltage[3]!).toBeCloseTo(v, 6)
    expect(deviceAmps[0]).toBeCloseTo(120 / v, 5)
  })

  it('couples a converter by its efficiency', () => {
    const form = loop({ id: 'in' })
    const both: NetworkForm = {
      nodes: [...form.nodes, 'h+'],
      branches: form.branches,
      devices: [
        ...form.devices,
        { id: 'out', positive: 'h+', negative: 'b-', min: 0, max: 20, sustainedFault: 20 },
        {
          id: 'house',
          positive: 'h+',
          negative: 'b-',
          min: -50,
          max: 100,
          sustainedFault: 'unlimited',
          emf: 13,
          internalResistance: 0.01,
        },
      ],
    }
    const { voltage, deviceAmps } = solved(
      both,
      new Map([['out', { amps: 8, input: 'in', efficiency: 0.9 }]]),
    )
    expect(voltage[4]).toBeCloseTo(13.08, 9)
    expect(-deviceAmps[1]! * (voltage[2]! - voltage[3]!)).toBeCloseTo((8 * 13.08) / 0.9, 6)
  })
})

describe('load flow without an answer', () => {
  it('says which devices ask for more power than the loop can pass', () => {
    // The most a loop of 0.0798 Ω passes from 12 V is 12²/(4·0.0798) = 451 W.
    expect(solved(loop({}), new Map([['load', { watts: -450 }]])).deviceAmps[1]).toBeLessThan(-60)
    expect(loadFlow(prepare(loop({})), new Map([['load', { watts: -453 }]]))).toEqual({
      reason: 'no-steady-state',
      devices: ['load'],
    })
  })

  it('names a battery without internal resistance, and a load without a bound', () => {
    const form = loop({ min: 'unlimited' })
    expect(loadFlow(prepare(form))).toEqual({ reason: 'operating-current-missing', devices: ['load'] })
    const { internalResistance: _, ...bare } = form.devices[0]!
    expect(loadFlow(prepare({ ...form, devices: [bare, form.devices[1]!] }))).toEqual({
      reason: 'internal-resistance-missing',
      devices: ['battery'],
    })
  })

  it('names the currents that leave a part without a battery out of balance, and takes those in balance', () => {
    const form = loop({})
    const sun: NetworkForm = {
      nodes: [...form.nodes, 's+', 's-'],
      branches: form.branches,
      devices: [
        ...form.devices,
        { id: 'array', positive: 's+', negative: 's-', min: 0, max: 9, sustainedFault: 11 },
        { id: 'controller', positive: 's+', negative: 's-', min: -20, max: 0, sustainedFault: 0 },
      ],
    }
    expect(solved(sun).deviceAmps.slice(2)).toEqual(Float64Array.of(0, 0))
    expect(loadFlow(prepare(sun), new Map([['array', { amps: 9 }]]))).toEqual({
      reason: 'currents-do-not-balance',
      devices: ['array', 'controller'],
    })
    expect(loadFlow(prepare(sun), new Map([['controller', { watts: -90 }]]))).toEqual({
      reason: 'voltage-undetermined',
      devices: ['controller'],
    })
  })

  it('throws on misuse', () => {
    const p = prepare(loop({}))
    expect(() => loadFlow(p, new Map([['nobody', { amps: 1 }]]))).toThrow(RangeError)
    expect(() => loadFlow(p, new Map([['load', { ohms: 0 }]]))).toThrow(RangeError)
    expect(() => loadFlow(p, new Map([['load', { amps: 1, input: 'battery', efficiency: 1.2 }]]))).toThrow(
      RangeError,
    )
  })
})
