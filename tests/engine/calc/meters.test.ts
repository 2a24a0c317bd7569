import { describe, expect, it } from 'vitest'
import { envelopes } from '../../../engine/calc/envelope'
import { loadFlow } from '../../../engine/calc/loadflow'
import { type MeterRole, meter } from '../../../engine/calc/meters'
import { prepare } from '../../../engine/calc/prepare'
import { deviceCurrents, readingErrors } from '../../../engine/calc/reading'
import { keepLp } from '../../reference/highs'
import { wholeNetwork } from '../../reference/kirchhoff'
import { Sketch, scrambled } from '../../reference/sketch'

/** Load bar, shunt and battery bar; what each test adds says what is wrong. Common practice, no source. */
const system = (): Sketch =>
  new Sketch()
    .wire('loads-', 'bar-', 0.0005, 'shunt')
    .wire('bat-', 'bar-', 0.001)
    .wire('bat+', 'bar+', 0.001)
    .device('battery', 'bat+', 'bat-', -50, 100, 12.8)
    .device('lamp', 'bar+', 'loads-', -5, 0)
    .device('pump', 'bar+', 'loads-', -8, 0)
    .device('charger', 'bar+', 'bar-', 0, 30)
    .device('inverter-charger', 'bar+', 'bar-', -80, 40)

function look(sketch: Sketch, role?: MeterRole) {
  const form = sketch.form()
  const p = prepare(form)
  const shunt = p.branchIndex.get('shunt')!
  const m = meter(p, envelopes(p).coefficients, role ? { shunt, role } : { shunt })
  const errors = readingErrors(deviceCurrents(p), m)
  const share = (id: string) => m.shares.find((s) => s.device === p.deviceIndex.get(id))!
  const names = (causes: readonly { device: number }[]) => causes.map((c) => form.devices[c.device]!.id)
  return { m, errors, share, names }
}
const exactly = (x: number) => ({ from: expect.closeTo(x, 9), to: expect.closeTo(x, 9) })

describe('load-side shunt', () => {
  it('tells the truth where every load returns through it and nothing else does', () => {
    const { m, errors, share } = look(system())
    expect(m.role).toBe('load')
    for (const id of ['lamp', 'pump'])
      expect(share(id)).toMatchObject({ range: { from: 1, to: 1 }, expected: 1 })
    for (const id of ['charger', 'inverter-charger'])
      expect(share(id)).toMatchObject({ range: { from: 0, to: 0 }, expected: 0 })
    expect(errors.over.amps).toBe(0)
    expect(errors.under.amps).toBe(0)
    expect(m.reversed).toBe(false)
    expect(m.betweenBatteries).toBe(0)
    expect(m.volts).toBe(12.8)
  })

  it('misses what a bypassing load draws', () => {
    const { errors, share, names } = look(system().device('fridge', 'bar+', 'bar-', -6, 0))
    expect(share('fridge')).toMatchObject({ range: { from: 0, to: 0 }, expected: 1 })
    expect(errors.under.amps).toBeCloseTo(6, 9)
    expect(errors.over.amps).toBe(0)
    expect(names(errors.under.causes)).toEqual(['fridge'])
  })

  it('takes a source behind it off the reading', () => {
    const { errors, share, names } = look(system().device('sun', 'bar+', 'loads-', 0, 20))
    expect(share('sun')).toMatchObject({ range: { from: 1, to: 1 }, expected: 0 })
    expect(errors.under.amps).toBeCloseTo(20, 9)
    expect(names(errors.under.causes)).toEqual(['sun'])
  })

  it('gives an inverter-charger behind it both errors', () => {
    const { errors } = look(system().device('second inverter-charger', 'bar+', 'loads-', -70, 25))
    expect(errors.over.amps).toBeCloseTo(70, 9)
    expect(errors.under.amps).toBeCloseTo(25, 9)
  })

  it('sees only part where the chassis lies beside the return', () => {
    // Current divides by conductance: through bar and shunt 0.01 + 0.0005 Ω, over the chassis 0.03 + 0.002 Ω.
    const { share, errors } = look(
      system()
        .wire('fan-', 'loads-', 0.01)
        .wire('fan-', 'chassis', 0.03)
        .wire('chassis', 'bar-', 0.002)
        .device('fan', 'bar+', 'fan-', -10, 0),
    )
    const part = 0.032 / (0.032 + 0.0105)
    expect(share('fan').range).toEqual(exactly(part))
    // The chassis path carries part of the other loads too.
    const others = 0.042 / (0.042 + 0.0005)
    expect(share('lamp').range).toEqual(exactly(others))
    expect(errors.under.amps).toBeCloseTo(10 * (1 - part) + 13 * (1 - others), 9)
  })

  it('knows when it is the wrong way round', () => {
    const turned = system()
    const { from, to, ...shunt } = turned.branches[0]!
    turned.branches[0] = { ...shunt, from: to, to: from }
    const { m, share, errors } = look(turned)
    expect(m.reversed).toBe(true)
    expect(share('lamp').range).toEqual({ from: -1, to: -1 })
    expect(errors.under.amps).toBeCloseTo(26, 9)
  })

  it('knows when batteries are on both sides', () => {
    const { m, share, errors } = look(system().device('second', 'bar+', 'loads-', -50, 60, 12.8))
    expect(m.betweenBatteries).toBe(1)
    expect(share('lamp').range).toEqual({ from: 0, to: 1 })
    // The second battery's own current never comes from the load bar: 60 A out of it, or 50 A into it.
    expect(errors.under.amps).toBeCloseTo(60, 9)
    expect(errors.over.amps).toBeCloseTo(50, 9)
  })

  it('leaves the starting circuit on the same chassis alone', () => {
    const { share, errors } = look(
      system()
        .wire('bar-', 'chassis', 0.001)
        .device('starter battery', 'start+', 'chassis', -80, 600, 12.6)
        .device('radio', 'start+', 'chassis', -4, 0)
        .device('dc charger/in', 'start+', 'chassis', -35, 0)
        .device('dc charger/out', 'bar+', 'bar-', 0, 30),
    )
    for (const id of ['radio', 'dc charger/in']) expect(share(id).expected).toBeUndefined()
    expect(share('dc charger/out')).toMatchObject({ range: { from: 0, to: 0 }, expected: 0 })
    expect(errors.under.amps).toBe(0)
    expect(errors.over.amps).toBe(0)
  })

  it('counts the input of a step-down converter as a load, and leaves what it feeds alone', () => {
    const { share, errors } = look(
      system()
        .device('converter/in', 'bar+', 'loads-', -12, 0)
        .device('converter/out', 'five', 'loads-', 0, 20)
        .device('camera', 'five', 'loads-', -3, 0),
    )
    expect(share('converter/in')).toMatchObject({ range: { from: 1, to: 1 }, expected: 1 })
    expect(share('camera')).toMatchObject({ range: { from: 0, to: 0 }, expected: undefined })
    expect(errors.under.amps).toBe(0)
  })

  it('says that nothing can balance a device left on its own', () => {
    expect(look(system().device('stray', 'nowhere+', 'nowhere-', -1, 0)).share('stray').range).toBeUndefined()
  })
})

describe('battery shunt', () => {
  const bank = (): Sketch =>
    new Sketch()
      .wire('bar-', 'bat-', 0.0005, 'shunt')
      .wire('bat+', 'bar+', 0.001)
      .device('battery', 'bat+', 'bat-', -50, 100, 12.8)
      .device('lamp', 'bar+', 'bar-', -5, 0)
      .device('charger', 'bar+', 'bar-', 0, 30)

  it('tells the truth where every load and source passes it', () => {
    const { m, share, errors } = look(bank())
    expect(m.role).toBe('battery')
    for (const id of ['lamp', 'charger'])
      expect(share(id)).toMatchObject({ range: { from: 1, to: 1 }, expected: 1 })
    expect(errors.over.amps).toBe(0)
    expect(errors.under.amps).toBe(0)
  })

  it('gives a range inside one battery lead, and calls it an error', () => {
    const { m, share, errors } = look(bank().device('second', 'bar+', 'bar-', -50, 100, 12.8))
    expect(share('lamp').range).toEqual({ from: 0, to: 1 })
    expect(m.betweenBatteries).toBe(1)
    // Truth is what both deliver; the second alone can give 5 A to the lamp and 50 A to the first ... reading −50, truth 5.
    expect(errors.under.amps).toBeCloseTo(55, 9)
  })

  it('misses a charger on the battery post', () => {
    const { share, errors, names } = look(bank().device('sun', 'bar+', 'bat-', 0, 20), 'battery')
    expect(share('sun')).toMatchObject({ range: { from: 0, to: 0 }, expected: 1 })
    expect(errors.over.amps).toBeCloseTo(20, 9)
    expect(names(errors.over.causes)).toEqual(['sun'])
  })

  it('stands in the positive as well, and under a bank in series', () => {
    const sketch = new Sketch()
      .wire('bat+', 'bar+', 0.0005, 'shunt')
      .device('low', 'middle', 'bar-', -50, 100, 12.8)
      .device('high', 'bat+', 'middle', -50, 100, 12.8)
      .device('lamp', 'bar+', 'bar-', -5, 0)
      .device('charger', 'bar+', 'bar-', 0, 30)
    const { m, share, errors } = look(sketch)
    expect(m.role).toBe('battery')
    expect(share('lamp').range).toEqual({ from: 1, to: 1 })
    expect(errors.over.amps).toBe(0)
    expect(m.volts).toBe(25.6)
  })
})

describe('shares', () => {
  it('are what the load flow gives for 1 A drawn and one battery making it up, on 300 networks', () => {
    const seen = { one: 0, several: 0 }
    for (let seed = 1; seed <= 300; seed++) {
      const form = scrambled(seed)
      const p = prepare(form)
      const shunt = p.branchIndex.get('shunt')!
      const { shares } = meter(p, envelopes(p).coefficients, { shunt })
      const passing = (drawer: string, giver: string): number => {
        const operations = new Map(form.devices.map((d) => [d.id, { amps: 0 }]))
        operations.set(drawer, { amps: -1 }).set(giver, { amps: 1 })
        const flow = loadFlow(p, operations)
        if ('reason' in flow) throw new Error(flow.reason)
        return flow.branchAmps[shunt]!
      }
      for (const s of shares) {
        const pair = (d: number) => [p.net[p.negative[d]!], p.net[p.positive[d]!]].join()
        const beside = form.devices.filter((b, i) => b.emf !== undefined && pair(i) === pair(s.device))
        const [low, high] = pair(s.device).split(',')
        if (beside.length === 0 || low === high) continue
        const found = beside.map((b) => passing(form.devices[s.device]!.id, b.id))
        const { from, to } = s.range!
        expect(from).toBeLessThanOrEqual(Math.min(...found) + 1e-9)
        expect(to).toBeGreaterThanOrEqual(Math.max(...found) - 1e-9)
        if (p.netCount > 2) continue
        // Two nets: there is no other way to make it up.
        expect(from).toBeCloseTo(Math.min(...found), 9)
        expect(to).toBeCloseTo(Math.max(...found), 9)
        if (beside.length === 1) seen.one++
        else seen.several++
      }
    }
    expect(seen.one).toBeGreaterThan(50)
    expect(seen.several).toBeGreaterThan(50)
  })
})

describe('reading error against HiGHS', () => {
  it('is that of a linear program in device currents, branch currents and node voltages, on 600 networks', () => {
    const seen = { finite: 0, endless: 0, wrong: 0 }
    for (let seed = 1; seed <= 600; seed++) {
      const form = scrambled(seed)
      const p = prepare(form)
      const shunt = p.branchIndex.get('shunt')!
      const m = meter(p, envelopes(p).coefficients, { shunt, role: seed % 2 === 0 ? 'load' : 'battery' })
      const errors = readingErrors(deviceCurrents(p), m)
      const lp = wholeNetwork(form)
      const objective = new Float64Array(lp.bounds.length)
      objective[form.devices.length + shunt] = 1
      m.truth.forEach((c, d) => {
        objective[d]! -= c
      })
      const kept = keepLp(lp)
      const over = kept.optimise('max', objective)
      const under = kept.optimise('min', objective)
      kept.dispose()
      for (const [ours, theirs] of [
        [errors.over, over],
        [errors.under, under],
      ] as const) {
        if (theirs.status === 'unbounded') {
          seen.endless++
          expect(ours.amps).toBe(Number.POSITIVE_INFINITY)
          continue
        }
        if (theirs.status !== 'optimal') throw new Error(theirs.status)
        seen.finite++
        if (ours.amps > 0.01) seen.wrong++
        expect(Math.abs(ours.amps - Math.abs(theirs.value))).toBeLessThan(1e-6 * (1 + ours.amps))
      }
    }
    expect(seen.finite).toBeGreaterThan(800)
    expect(seen.wrong).toBeGreaterThan(400)
    expect(seen.endless).toBeGreaterThan(20)
  })
})
