import { describe, expect, it } from 'vitest'
import { networkOf } from '../../../engine/calc/network'
import { operate } from '../../../engine/calc/operate'
import type { OperatingPoint, OperatingState } from '../../../engine/calc/operating/state'
import { usualState } from '../../../engine/calc/operating/usual'
import type { Operation } from '../../../engine/calc/operation'
import type { Design } from '../../../engine/model/design'
import { partById } from '../../../engine/model/lookup'
import { partNamed } from '../../build'
import { certificate } from '../../reference/balance'
import { type Case, hasNgspice, simulate } from '../../reference/ngspice/deck'
import { DEMOS } from '../../scenarios/demos/all'
import { mistakes } from '../../scenarios/demos/mistakes'
import { trailer } from '../../scenarios/demos/trailer'
import { truck } from '../../scenarios/demos/truck'
import { vetVan } from '../../scenarios/demos/vetvan'

function point(d: Design, state: OperatingState): OperatingPoint {
  const answer = operate(d, state)
  if (!answer.ok) throw new Error(answer.reason)
  return answer
}

const sunny = (state: OperatingState): OperatingState => ({
  ...state,
  sources: new Map([...state.sources.keys()].map((id) => [id, 1])),
})

describe.each(DEMOS.map((demo) => [demo.title, demo.make()] as const))('%s', (_, d) => {
  const usual = usualState(d)
  it.each([
    ['at rest', usual],
    ['with every source on', sunny(usual)],
    [
      'at half charge with every source on',
      { ...sunny(usual), charge: new Map([...usual.charge.keys()].map((id) => [id, 0.5])) },
    ],
  ])('%s balances at every node, on every way and in power', (__, state) => {
    const p = point(d, state)
    const { kirchhoff, ohm, power } = certificate(d, p)
    expect(kirchhoff).toBeLessThan(1e-6)
    expect(ohm).toBeLessThan(1e-6)
    expect(power).toBeLessThan(1e-6)
  })

  it('comes to rest in a state that stays as it is', () => {
    expect(point(d, usual).state).toEqual(usual)
  })
})

/**
 * The network of a design with every battery full at 13.4 V for each 12 V, each load as its card states it (amps, or
 * watts), sources at rest, and step-down converters holding their voltage less a thousandth at full current. What
 * hangs on an array is tied to the simulator's ground; its negative is joined to the battery's.
 */
function fullUse(d: Design): Case {
  const { form, devices, nodeOf } = networkOf(d, 'none', new Set())
  const does = (id: string): Operation | null => {
    const { part, device, role } = devices.get(id)!
    const { kind, values } = partById(d, part)!
    const figure = (key: string): number => Number(values[key])
    if (role === 'battery') return null
    if (kind === 'step-down') {
      if (device.key === 'input') return null
      const ohms = (0.001 * figure('outputV')) / figure('outputA')
      const efficiency = figure('efficiency') / 100
      return { volts: figure('outputV'), ohms, input: `${part}/input`, efficiency }
    }
    if (kind.startsWith('inverter')) return { watts: -figure('powerW') / (figure('efficiency') / 100) }
    if (role === 'source' || device.key === 'input') return { amps: 0 }
    const amps = values.currentA == null ? figure('supplyA') : figure('currentA')
    const full = d.settings.systemV * amps
    if (values.nature === 'power') return { watts: -full }
    return values.nature === 'resistance' ? { ohms: d.settings.systemV ** 2 / full } : { amps: -amps }
  }
  return {
    name: `${d.settings.name}, full use`,
    form: {
      ...form,
      devices: form.devices.map((x) => {
        const battery = partById(d, devices.get(x.id)!.part)!.values
        return x.emf === undefined ? x : { ...x, emf: (13.4 * Number(battery.volts)) / 12 }
      }),
    },
    operations: form.devices.flatMap(({ id }) => {
      const o = does(id)
      return o ? [[id, o] as const] : []
    }),
    grounds: [
      nodeOf.get(`${partNamed(d, 'G1').id}/-`)!,
      ...d.parts.flatMap((x) => (x.kind === 'pv-array' ? [nodeOf.get(`${x.id}/+`)!] : [])),
    ],
  }
}

describe('against a circuit simulator', () => {
  it.skipIf(!hasNgspice()).each([
    ['the trailer', trailer()],
    ['the truck with its 12 V side', truck()],
  ])('%s has the same voltages with all loads on, to 1e-6 V', (_, d) => {
    const c = fullUse(d)
    const { nodeOf } = networkOf(d, 'none', new Set())
    const volts = simulate(c)
    const p = point(d, usualState(d))
    for (const [terminal, v] of p.volts) {
      const node = nodeOf.get(terminal) ?? terminal
      expect(Math.abs(v - volts[c.form.nodes.indexOf(node)]!)).toBeLessThan(1e-6)
    }
    expect(p.volts.size).toBeGreaterThan(60)
  })
})

describe('the trailer', () => {
  const d = trailer()

  it('draws on its shunts the sum of its cards', () => {
    const p = point(d, usualState(d))
    const loads = [...p.devices].filter(([, x]) => x.amps < 0).reduce((sum, [, x]) => sum - x.amps, 0)
    for (const { shows, off } of p.shunts.values()) {
      expect(shows).toBeCloseTo(loads, 9)
      expect(off).toBeCloseTo(0, 9)
    }
  })
})

describe('the veterinary van', () => {
  it('shows on the load-side shunt what its loads draw, whatever the sources give', () => {
    const d = vetVan()
    for (const state of [usualState(d), sunny(usualState(d))]) {
      const p = point(d, state)
      for (const { off } of p.shunts.values()) expect(off).toBeCloseTo(0, 8)
    }
  })

  it('loses the loads behind its master switch, and keeps those that are always on', () => {
    const d = vetVan()
    const usual = usualState(d)
    const off = point(d, { ...usual, open: new Set([`${partNamed(d, 'S1').id}/contact`]) })
    const amps = (part: string): number => off.devices.get(`${partNamed(d, part).id}/load`)!.amps
    for (const part of ['E1', 'E5', 'M1', 'M2', 'M4']) expect(amps(part)).toBeCloseTo(0, 12)
    expect(amps('E8')).toBe(-0.3)
    expect(amps('E7')).toBeLessThan(-5)
    // The coils of the pumps hang behind the master relay.
    expect(off.relays).toEqual(new Map(['K1', 'K2', 'K3'].map((k) => [`${partNamed(d, k).id}/coil`, false])))
  })

  it('with planted mistakes shows less by the load that passes the shunt by, and by the charger behind it', () => {
    const d = mistakes()
    const shunt = partNamed(d, 'B2').id
    const usual = usualState(d)
    const centrifuge = -point(d, usual).devices.get(`${partNamed(d, 'E5').id}/load`)!.amps
    expect(centrifuge).toBe(8)
    expect(point(d, usual).shunts.get(shunt)!.off).toBeCloseTo(-centrifuge, 8)
    const day = point(d, sunny(usual))
    const charger = day.devices.get(`${partNamed(d, 'T1').id}/output`)!.amps
    expect(charger).toBe(20)
    expect(day.shunts.get(shunt)!.off).toBeCloseTo(-centrifuge - charger, 8)
  })
})
