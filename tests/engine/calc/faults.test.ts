import { describe, expect, test } from 'vitest'
import { type FaultNetworks, faultNetworks } from '../../../engine/calc/faultcases'
import { devicesOf } from '../../../engine/calc/faults'
import { statesOf } from '../../../engine/calc/states'
import type { Design } from '../../../engine/model/design'
import { analyse } from '../../../engine/rules/analyse'
import { conductorNumbered, type DesignBuilder, design, partNamed } from '../../build'
import { Random } from '../../reference/random'
import { bench } from '../rules/bench'
import { randomDesign } from '../rules/randomdesign'

/** Copper at a temperature against 20 °C: 0.00393 a kelvin (published conductor tables). */
const COLD = 1 - 0.00393 * 30
const HOT = 1 + 0.00393 * 50
/** Class 5 copper, mΩ/m at 20 °C (IEC 60228), and two lugs of 0.02 mΩ. */
const mOhm = (perMetre: number, metres: number): number => perMetre * metres + 0.04

const faultsOf = (of: Design | DesignBuilder, number: string) => {
  const whole = 'build' in of ? of.build() : of
  return analyse(whole).answers.faults.runs.get(conductorNumbered(whole, number).id)
}
const near = (answer: unknown, wanted: number): void => {
  const { value } = answer as { value: number }
  expect(Math.abs(value - wanted) / wanted).toBeLessThan(1e-4)
}

describe('greatest', () => {
  test("Ohm's law from the battery to the block: fuses and contacts count as links", () => {
    const copper = mOhm(0.554, 0.15) + mOhm(0.554, 1)
    near(faultsOf(bench(), 'W2')?.to.greatest, 14.6 / ((4 + copper * COLD) / 1000))
  })

  // trawlerforum.com thread 75323: six 6 V batteries as three strings of two, 2,400 A each: 7,200 A. The design adds the
  // charge voltage of a full bank, 14.6 V for 12.8 V, and 9 links of 0.18 mΩ a metre that the thread leaves out.
  test('six 6 V batteries of 2,400 A: 7,200 A, of which a full bank and its links make 14.6/12.8 and a little less', () => {
    let bank = design({ systemV: 12, ruleSet: 'metric-automotive' }).part('busbar', 'W1').part('busbar', 'W2')
    for (const i of [1, 2, 3]) {
      for (const half of ['A', 'B'])
        bank = bank.part('battery', `G${i}${half}`, { volts: '6', chemistry: 'agm', shortCircuitKA: 2.4 })
      bank = bank
        .join(`G${i}A.+`, `W1.${i}l`, { size: '150mm2', lengthM: 0.01 })
        .join(`G${i}A.-`, `G${i}B.+`, { size: '150mm2', lengthM: 0.01 })
        .join(`G${i}B.-`, `W2.${i}l`, { size: '150mm2', lengthM: 0.01 })
    }
    const ohms = 2 * (6.4 / 2400) + (3 * mOhm(0.129, 0.01) * COLD) / 1000
    const joined = bank
      .join('W1.4l', 'W1.5l', { number: 'W99', size: '150mm2', lengthM: 0.01 })
      .part('lamp', 'E1', { currentA: 1 })
    const exact = (3 * 14.6) / ohms
    expect(exact / (7200 * (14.6 / 12.8))).toBeGreaterThan(0.97)
    // Behind the bar's own return the last millimetre of two links is shared by three strings, not by one.
    const found = faultsOf(joined, 'W99')?.to.greatest as { value: number }
    expect(found.value / exact).toBeGreaterThan(0.97)
    expect(found.value / exact).toBeLessThan(1.03)
  })
})

describe('least', () => {
  const battery = 8
  const fuses = [100 / 80, 100 / 10]

  test('at a load: out and back, hot copper, a low battery of twice the resistance, a tenth of a volt in each fuse', () => {
    const copper = mOhm(0.554, 0.15) + mOhm(0.554, 1) + mOhm(7.98, 3) + mOhm(7.98, 4)
    const ohms = (battery + fuses[0]! + fuses[1]! + copper * HOT) / 1000
    near(faultsOf(bench(), 'W3')?.to.least, 10 / ohms)
  })

  test('where no return is drawn beside it: one as long and as thick as the way out', () => {
    const copper = mOhm(0.554, 0.15) + mOhm(0.554, 1)
    near(faultsOf(bench(), 'W2')?.to.least, 10 / ((battery + fuses[0]! + 2 * copper * HOT) / 1000))
  })

  test('0 where no battery feeds it', () => {
    const array = bench()
      .part('pv-array', 'G5', { vocV: 22, iscA: 6, vmpV: 18, impA: 5, maxFuseA: 15 })
      .part('solar-controller', 'T5', { outputA: 10, pvMaxV: 75, isolated: true })
      .join('G5.+', 'T5.pv+', { number: 'W11', size: '4mm2', lengthM: 4 })
      .join('G5.-', 'T5.pv-', { number: 'W12', size: '4mm2', lengthM: 4 })
    const found = faultsOf(array, 'W11')
    expect(found?.to).toEqual({ greatest: { value: 7.5 }, least: { value: 0 }, clearing: [] })
  })

  test('names the device that guards the conductor, with its current and its latest time', () => {
    const whole = bench().build()
    const found = faultsOf(whole, 'W3')!
    expect(found.to.clearing).toHaveLength(1)
    const [guard] = found.to.clearing
    expect([guard?.part, guard?.key]).toEqual([partNamed(whole, 'F2').id, '1'])
    near({ value: guard?.amps }, (found.to.least as { value: number }).value)
    // Beyond 6 × 10 A the I²t of the last gate, 0.1 s at 60 A (ISO 8820-3, from memory), is not passed.
    near(guard?.within, 0.1 * (60 / guard!.amps) ** 2)
  })
})

describe('what is missing', () => {
  test('a length leaves what hangs on it unchecked, and nothing else', () => {
    const lacking = bench({ runs: { W3: { lengthM: null } } })
    expect(faultsOf(lacking, 'W3')?.to.least).toMatchObject({ notChecked: 'missing-run' })
    expect(faultsOf(lacking, 'W3')?.to.greatest).toMatchObject({ notChecked: 'missing-run' })
    expect(faultsOf(lacking, 'W5')).toEqual(faultsOf(bench(), 'W5'))
  })

  test('a charger without a figure has a say in the greatest current alone', () => {
    const lacking = bench()
      .part('mains-charger', 'T5')
      .join('T5.+', 'F1.2', { size: '10mm2', lengthM: 1 })
      .join('T5.-', 'G1.-', { size: '10mm2', lengthM: 1 })
    const found = faultsOf(lacking, 'W3')
    expect(found?.to.greatest).toMatchObject({ notChecked: 'missing-figure', parts: ['p6'] })
    expect(found?.to.least).toHaveProperty('value')
  })

  test('a resistance that is only a limit serves the least, not the greatest', () => {
    const found = faultsOf(bench({ parts: { G1: { internalMOhm: 4, internalIs: 'limit' } } }), 'W3')
    expect(found?.to.greatest).toMatchObject({ notChecked: 'resistance-is-limit', parts: ['p1'] })
    expect(found?.to.least).toEqual(faultsOf(bench(), 'W3')?.to.least)
  })

  test('a battery that states no resistance leaves open what hangs on it, and nothing in a system of its own', () => {
    const beside = (internalMOhm: number | null) =>
      bench()
        .part('battery', 'G7', { capacityAh: 50, dischargeA: 50, chargeA: 20, internalMOhm })
        .part('fuse-blade', 'F7', { ratingA: 10 })
        .part('lamp', 'E7', { currentA: 2 })
        .join('G7.+', 'F7.1', { size: '4mm2', lengthM: 0.2, number: 'W71' })
        .join('F7.2', 'E7.+', { size: '4mm2', lengthM: 2, number: 'W72' })
        .join('E7.-', 'G7.-', { size: '4mm2', lengthM: 2, number: 'W73', returnOf: 'W72' })
    const id = beside(null)
      .build()
      .parts.find((p) => p.designation === 'G7')!.id
    const gap = { notChecked: 'internal-resistance-missing', parts: [id] }
    const found = faultsOf(beside(null), 'W72')
    expect(found?.to.greatest).toMatchObject(gap)
    expect(found?.to.least).toMatchObject(gap)
    expect(faultsOf(beside(20), 'W72')?.to.least).toHaveProperty('value')
    expect(faultsOf(beside(null), 'W3')).toEqual(faultsOf(bench(), 'W3'))
  })

  test('returns are not in the answer', () => {
    expect(faultsOf(bench(), 'W4')).toBeUndefined()
  })
})

describe('more positions than there is time for', () => {
  test('currents through devices are not checked then, and figures for few positions stay', () => {
    const isTold = (networks: readonly FaultNetworks[]): boolean =>
      networks.length > 1 && [...devicesOf(networks).values()].some(({ greatest }) => 'value' in greatest)
    const networks = Array.from({ length: 60 }, (_, seed) =>
      statesOf(randomDesign(new Random(seed + 1), 60, 'sensible')).states.map(faultNetworks),
    ).find(isTold)!
    const all = devicesOf(networks)
    const few = devicesOf(networks, 1)
    expect([...few.keys()]).toEqual([...all.keys()])
    const told = [...all].filter(([, { greatest }]) => 'value' in greatest)
    expect(told.length).toBeGreaterThan(0)
    for (const [id, { part }] of told)
      expect(few.get(id)?.greatest).toEqual({
        notChecked: 'too-many-positions',
        parts: [part],
        conductors: [],
      })
    expect(devicesOf(networks.slice(0, 1), 1e30)).toEqual(devicesOf(networks.slice(0, 1)))
  })
})
