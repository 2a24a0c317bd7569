import { describe, expect, test } from 'vitest'
import { handoverFacts } from '../../../engine/calc/handover/facts'
import { readingsOf } from '../../../engine/calc/handover/readings'
import { idleDays, lastingRows, usableWh } from '../../../engine/words/handover/chapters/lasting'
import { handoverWords } from '../../../engine/words/handover/languages'
import { sayIn } from '../../../engine/words/handover/say'
import { design } from '../../build'
import { DEMOS } from '../../scenarios/demos/all'

/** Figures by hand: Kirchhoff's current law, and energy over power. */
const small = () =>
  design()
    .part('battery', 'G1', { capacityAh: 100, chemistry: 'lfp', volts: '12', internalMOhm: 10 })
    .part('shunt', 'B1', { role: 'battery', ratingA: 100, millivolts: 50 })
    .part('panel-switch', 'S1', { ratingA: 16 })
    .part('lamp', 'E1', { currentA: 4 })
    .part('fan', 'M1', { currentA: 2 })
    .part('monitor-hub', 'K1', { supplyA: 0.1 })
    .part('busbar', 'W100', { studs: 8, pole: 'negative' })
    .part('busbar', 'W101', { studs: 8, pole: 'positive' })
    .join('G1.+', 'W101.1l')
    .join('W101.2l', 'S1.1')
    .join('S1.2', 'E1.+')
    .join('W101.3l', 'M1.+')
    .join('W101.4l', 'K1.+')
    .join('E1.-', 'W100.1l')
    .join('M1.-', 'W100.2l')
    .join('K1.-', 'W100.3l')
    .join('W100.4l', 'B1.s')
    .join('B1.b', 'G1.-')

describe('what is normal', () => {
  test('a battery shunt shows the sum of what draws, in each usual state', () => {
    const [s] = readingsOf(small().build()).shunts
    expect(s!.allOn).toBeCloseTo(6.1, 6)
    expect(s!.switchedOff).toBeCloseTo(2.1, 6)
    expect(s!.watching).toBeCloseTo(0.1, 6)
  })

  test('what each thing takes is told, greatest first', () => {
    const { draws } = readingsOf(small().build())
    expect(draws.map((d) => [d.part.designation, Number(d.amps.toFixed(6))])).toEqual([
      ['E1', 4],
      ['M1', 2],
      ['K1', 0.1],
    ])
  })

  test('what all things of a demo take adds up to what its battery shunt shows, but for losses', () => {
    for (const file of [
      'veterinary-van.json',
      'camping-trailer.json',
      'mountain-cabin.json',
      'expedition-truck.json',
    ]) {
      const { draws, shunts } = readingsOf(DEMOS.find((d) => d.file === file)!.make())
      const sum = draws.reduce((all, d) => all + d.amps, 0)
      const shown = shunts.find((s) => s.measures === 'battery')!.allOn!
      // Coils, and what conductors and converters lose, are in the reading alone.
      expect([file, sum / shown > 0.85 && sum / shown < 1.1]).toEqual([file, true])
    }
  })

  test('full batteries last as many hours as their usable amp-hours over the current', () => {
    const facts = handoverFacts(small().build())
    const rows = lastingRows(facts, sayIn(handoverWords('en'), facts.design))
    // 80 % of 100 Ah (common practice for this chemistry); 6.1 A flow where everything is on.
    expect(rows.map((r) => [r.label, r.value])).toEqual([
      ['2 A out', 'about 40 h'],
      ['5 A out', 'about 16 h'],
    ])
  })

  test('what no switch reaches is told', () => {
    const { always, byHand } = readingsOf(small().build())
    expect(always.map((p) => p.designation)).toEqual(['M1', 'K1'])
    expect(byHand).toBe(true)
  })

  test('full batteries last as long as energy over power', () => {
    const facts = handoverFacts(small().build())
    expect(facts.storedWh).toBe(1200)
    expect(usableWh(facts)).toBeCloseTo(960, 9)
    // 0.1 A at 13.4 V of rest, less what is lost on the way: 1.34 W, and 960 Wh last 29.9 days.
    expect(idleDays(facts)).toBeCloseTo(960 / (0.1 * 13.4) / 24, 1)
  })

  test('rest voltages follow the chemistry and the voltage of the system', () => {
    const cabin = readingsOf(DEMOS.find((d) => d.file === 'mountain-cabin.json')!.make())
    expect(cabin.rest.map((r) => r.chemistry)).toEqual(['agm'])
    // Twelve-volt AGM rests at 12.85 V full and 12.3 V half full (common practice); the cabin has four in series.
    expect(cabin.rest[0]!.rows[0]!.volts).toBeCloseTo(4 * 12.85, 9)
    expect(cabin.rest[0]!.rows[1]!.volts).toBeCloseTo(4 * 12.3, 9)
  })

  test('a charging source gives its limit, an array no more than its power', () => {
    const van = readingsOf(DEMOS.find((d) => d.file === 'veterinary-van.json')!.make())
    expect(van.charging.map((c) => [c.part.designation, c.from?.designation ?? null])).toEqual([
      ['T1', 'G5'],
      ['T2', 'G6'],
      ['T3', 'G7'],
      ['T4', 'G4'],
      ['T5', null],
    ])
    for (const { amps, part } of van.charging) {
      expect(amps).toBeGreaterThan(0)
      const limit = part.values.outputA ?? part.values.chargeA
      expect(amps).toBeLessThanOrEqual(Number(limit) + 1e-6)
    }
  })

  test('without a battery nothing is known, and it says so', () => {
    const none = readingsOf(design().part('lamp', 'E1', { currentA: 1 }).build())
    expect(none.allOn).toBeNull()
    expect(none.watchingW).toBeNull()
  })
})
