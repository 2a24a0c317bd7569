import { describe, expect, it } from 'vitest'
import { commissioningSteps } from '../../../engine/calc/commissioning/steps'
import { design, partNamed } from '../../build'
import {
  addLoad,
  BATTERY_OHMS,
  FULL_V,
  figureOf,
  SHUNT_OHMS,
  stepAt,
  stepOf,
  THICK,
  THICK_OHMS,
  THIN,
  THIN_OHMS,
  withShunts,
} from './bench'

/** Ohm's law by hand: everything between the cells and a load on the loads bar. */
const WAY = 2 * THIN_OHMS + 4 * THICK_OHMS + 2 * SHUNT_OHMS

describe('one load on, by hand', () => {
  const d = addLoad(addLoad(withShunts(), 'E1', 10), 'E2', 4).build()
  const [b1, b2] = [partNamed(d, 'B1').id, partNamed(d, 'B2').id]
  const step = stepAt(d, 'loads', 'E1', 'load')

  it('the clamp meter shows its typed current, within a tenth and 0.2 A', () => {
    expect(figureOf(step, 'amps')).toMatchObject({ usual: 10, least: 8.8, most: 11.2, unit: 'A' })
  })

  it('the load-side shunt shows the same, held against the clamp meter', () => {
    expect(figureOf(step, `shunt:${b2}`)).toMatchObject({
      usual: 10,
      least: 8.8,
      most: 11.2,
      against: { reading: 'amps', times: 1, plus: 0, share: 0.03, amount: 0.2 },
    })
  })

  it('the voltage left is that of the cells less R · I', () => {
    const { usual, least, most } = figureOf(step, 'volts')
    const full = FULL_V - 10 * (BATTERY_OHMS + WAY)
    expect(usual).toBeCloseTo(full, 2)
    expect(most).toBeCloseTo(full * 1.04 + 0.05, 2)
    // Common practice, no source: 12.9 V at a fifth of the charge, between 12.8 V at a tenth and 13.1 V at a half.
    const low = 12.8 + ((0.2 - 0.1) / (0.5 - 0.1)) * (13.1 - 12.8) - 10 * (BATTERY_OHMS + WAY)
    expect(least).toBeLessThan(low)
    expect(least).toBeGreaterThan(low - 0.3)
  })

  it('with all loads on, both shunts show the sum', () => {
    const all = stepOf(d, 'load-side/all')
    expect(figureOf(all, `shunt:${b1}`).usual).toBe(14)
    expect(figureOf(all, `shunt:${b2}`).usual).toBe(14)
    expect(figureOf(stepOf(d, 'load-side/one'), `shunt:${b2}`).usual).toBe(10)
  })

  it('the drop of a far load is R · I, with all loads on', () => {
    const far = stepAt(d, 'far-loads', 'E1', 'load')
    const shared = 4 * THICK_OHMS + 2 * SHUNT_OHMS
    const drop = 10 * 2 * THIN_OHMS + 14 * shared
    const { usual, against } = figureOf(far, 'load')
    expect(against?.plus).toBeCloseTo(-drop, 2)
    expect(against?.amount).toBeCloseTo(0.25 * drop + 0.05, 2)
    expect(usual).toBeCloseTo(FULL_V - 14 * BATTERY_OHMS - drop, 2)
    expect(figureOf(far, 'posts').usual).toBeCloseTo(FULL_V - 14 * BATTERY_OHMS, 2)
  })

  it('a shunt at rest shows nothing, within a thousandth of its rating', () => {
    expect(figureOf(stepOf(d, `shunts/${b2}/zero`), `shunt:${b2}`)).toMatchObject({ least: -0.1, most: 0.1 })
  })

  it('the loads bar has next to no resistance to the post, and the two sides of its shunt are apart without it', () => {
    const returns = stepOf(d, 'resistance/returns')
    expect(figureOf(returns, partNamed(d, 'W91').id)).toMatchObject({ least: 0, most: 0.5, unit: 'Ω' })
    expect(figureOf(stepOf(d, `resistance/round/${b2}`), 'round')).toMatchObject({ least: 10, most: null })
  })
})

describe('the frame', () => {
  const bare = addLoad(withShunts(), 'E1', 10)
  const keys = (d: ReturnType<typeof bare.build>) => commissioningSteps(d).map((s) => s.key)

  it('without a bond, neither pole is joined to it', () => {
    const step = stepOf(bare.build(), 'resistance/off-frame')
    expect(step.readings.every((r) => r.expected.is === 'figure' && r.expected.least === 10)).toBe(true)
    expect(step.readings.map((r) => r.at[0]!.part)).toContain(partNamed(bare.build(), 'G1').id)
  })

  it('with a bond, the bond is measured instead', () => {
    const d = bare.part('chassis-point', 'X1').join('X1.31', 'W90.5l', THICK).build()
    expect(keys(d)).not.toContain('resistance/off-frame')
    expect(figureOf(stepOf(d, 'resistance/frame'), partNamed(d, 'X1').id)).toMatchObject({
      least: 0,
      most: 0.5,
    })
  })
})

describe('what is drawn wrongly shows', () => {
  it('a load returned to the bar before the load-side shunt: its reading proves nothing, whatever it is', () => {
    const d = addLoad(withShunts(), 'E1', 10, 'W90.3l').build()
    const step = stepAt(d, 'loads', 'E1', 'load')
    const shown = step.readings.find((r) => r.key === `shunt:${partNamed(d, 'B2').id}`)
    expect(shown?.expected).toMatchObject({ is: 'not-known', because: 'untrue-as-drawn' })
    expect(figureOf(step, 'amps').usual).toBe(10)
  })

  it('a second way round the load-side shunt leaves nothing to expect of the test for it', () => {
    const d = addLoad(withShunts(), 'E1', 10).join('W90.3l', 'W91.3l', THICK).build()
    expect(stepOf(d, `resistance/round/${partNamed(d, 'B2').id}`).readings[0]!.expected).toMatchObject({
      is: 'not-known',
      because: 'joined-as-drawn',
    })
  })
})

describe('nothing is made up', () => {
  it.each([
    ['no current', addLoad(withShunts(), 'E1', null), 'amps', 'no-draw'],
    ['no feed', withShunts().part('load', 'E1', { currentA: 3 }), 'amps', 'no-supply'],
    [
      'no length',
      withShunts()
        .part('load', 'E1', { currentA: 3 })
        .join('G1.+', 'E1.+', { size: '2.5mm2' })
        .join('E1.-', 'W91.2l', THIN),
      'volts',
      'missing-run',
    ],
  ])('a load with %s has a reading without expectation', (_, builder, reading, because) => {
    const step = stepAt(builder.build(), 'loads', 'E1', 'load')
    expect(step.readings.find((r) => r.key === reading)?.expected).toMatchObject({ is: 'not-known', because })
  })

  it('a cut-out without typed voltages', () => {
    const d = withShunts()
      .part('low-voltage-cut-out', 'K1', { ratingA: 40 })
      .join('G1.+', 'K1.1', THIN)
      .build()
    const [closes, opens] = stepAt(d, 'cut-outs', 'K1', '').readings
    for (const r of [closes, opens]) expect(r!.expected).toMatchObject({ because: 'no-threshold' })
  })

  it('without a battery nothing throws, and nothing is expected of a load', () => {
    const d = design().part('load', 'E1', { currentA: 3 }).build()
    const step = stepAt(d, 'loads', 'E1', 'load')
    expect(step.readings.every((r) => r.expected.is === 'not-known')).toBe(true)
    expect(commissioningSteps(design().build())).toEqual([])
  })
})

describe('switches and sources', () => {
  it('only the switches that a load needs are on, through its relay', () => {
    const d = withShunts()
      .part('panel-switch', 'S1', { ratingA: 10 })
      .part('panel-switch', 'S2', { ratingA: 10 })
      .part('relay', 'K1', { ratingA: 40, coilA: 0.15 })
      .part('load', 'E1', { currentA: 8 })
      .part('load', 'E2', { currentA: 2 })
      .join('G1.+', 'K1.30', THIN)
      .join('K1.87', 'E1.+', THIN)
      .join('G1.+', 'S1.1', THIN)
      .join('S1.2', 'K1.86', THIN)
      .join('K1.85', 'W91.3l', THIN)
      .join('G1.+', 'S2.1', THIN)
      .join('S2.2', 'E2.+', THIN)
      .join('E1.-', 'W91.4l', THIN)
      .join('E2.-', 'W91.5l', THIN)
      .build()
    const load = stepAt(d, 'loads', 'E1', 'load')
    expect(load.setting.on).toEqual([partNamed(d, 'S1').id])
    // The coil, 12 V / 0.15 A = 80 Ω, returns through the load-side shunt as well: 13.4 V / 80 Ω.
    const b2 = `shunt:${partNamed(d, 'B2').id}`
    expect(figureOf(load, b2)).toMatchObject({ usual: 8.17, against: { plus: 0.17 } })
    expect(stepAt(d, 'loads', 'E2', 'load').setting.on).toEqual([partNamed(d, 'S2').id])
    const relay = stepAt(d, 'relays', 'K1', '')
    expect(figureOf(relay, 'on:30-87').usual).toBeCloseTo(FULL_V, 1)
    expect(figureOf(relay, 'off:30-87')).toMatchObject({ usual: 0, least: -0.5, most: 0.5 })
  })

  it('a charger shows below 0 on the battery shunt and not at all on the load side', () => {
    const d = addLoad(withShunts(), 'E1', 10)
      .part('mains-charger', 'T1', { outputA: 20 })
      .join('T1.+', 'G1.+', THICK)
      .join('T1.-', 'W90.4l', THICK)
      .build()
    const step = stepAt(d, 'charging', 'T1', 'output')
    expect(figureOf(step, 'amps')).toMatchObject({ usual: 20, least: 0.1 })
    const [b1, b2] = [partNamed(d, 'B1').id, partNamed(d, 'B2').id]
    expect(figureOf(step, `shunt:${b1}`)).toMatchObject({ usual: -20, against: { times: -1, plus: 0 } })
    expect(figureOf(step, `shunt:${b2}`)).toMatchObject({ usual: 0, most: 0.1 })
  })

  it('behind a fuse that is out there is 0 V; behind the fuse of one of two batteries there is the other', () => {
    const d = withShunts()
      .part('battery', 'G2', { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 })
      .part('fuse-cartridge', 'F1', { ratingA: 100 })
      .part('fuse-cartridge', 'F2', { ratingA: 100 })
      .part('fuse-blade', 'F3', { ratingA: 10 })
      .part('busbar', 'W92', { pole: 'positive' })
      .part('load', 'E1', { currentA: 5 })
      .join('G1.+', 'F1.1', THICK)
      .join('G2.+', 'F2.1', THICK)
      .join('F1.2', 'W92.1l', THICK)
      .join('F2.2', 'W92.2l', THICK)
      .join('G2.-', 'B1.b', THICK)
      .join('W92.3l', 'F3.1', THIN)
      .join('F3.2', 'E1.+', THIN)
      .join('E1.-', 'W91.2l', THIN)
      .build()
    const out = (fuse: string) => {
      const step = stepAt(d, 'isolating', fuse, '')
      return figureOf(step, step.readings[0]!.key)
    }
    expect(out('F3')).toMatchObject({ usual: 0, least: -0.5, most: 0.5 })
    expect(out('F1').usual).toBeCloseTo(FULL_V, 1)
  })

  it('batteries in parallel carry a load one at a time', () => {
    const d = addLoad(withShunts(), 'E1', 10)
      .part('battery', 'G2', { capacityAh: 100, dischargeA: 100, chargeA: 50, internalMOhm: 4 })
      .join('G2.+', 'G1.+', THICK)
      .join('G2.-', 'B1.b', THICK)
      .build()
    const step = stepAt(d, 'source-alone', 'G1', 'cells')
    expect(step.setting.off).toEqual([partNamed(d, 'G2').id])
    expect(figureOf(step, 'amps').usual).toBe(10)
    expect(figureOf(step, 'volts').usual).toBeCloseTo(FULL_V - 10 * BATTERY_OHMS, 2)
  })

  it('an array shows its open-circuit voltage; 24 V times two modules, colder is more', () => {
    const values = { series: 2, vocV: 24, iscA: 6, vmpV: 20, impA: 5.5, maxFuseA: 10, vocPerKelvin: -0.3 }
    const d = design({ systemV: 12, coldestC: -5 }).part('pv-array', 'G5', values).build()
    // Voc · (1 − 0.003 · (−5 − 25)), the cold-voltage formula of IEC 62548 as restated in public, and 1 % of the meter.
    const most = 48 * (1 + 0.003 * 30) * 1.01
    const { usual, least, most: found } = figureOf(stepAt(d, 'polarity', 'G5', 'array'), 'volts')
    expect([usual, least]).toEqual([48, 33.6])
    expect(found).toBeCloseTo(most, 2)
  })
})
