import { describe, expect, it } from 'vitest'
import { drawing, type LoadDrop, loadDrops, sourcesOff } from '../../../engine/calc/drop'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { keepLp } from '../../reference/highs'
import { wholeNetwork } from '../../reference/kirchhoff'
import { Sketch, scrambled } from '../../reference/sketch'

function dropOf(form: NetworkForm, id: string): LoadDrop {
  const p = prepare(form)
  const answer = loadDrops(p)(p.deviceIndex.get(id)!)
  if ('reason' in answer) throw new Error(answer.reason)
  return answer
}
const on = (form: NetworkForm, drop: LoadDrop) =>
  form.devices.flatMap((d, i) => (drop.witness[i]! < 0 ? [d.id] : []))

describe('worst-case drop of a load', () => {
  // Class 5 conductor, 2.5 mm², 7.98 Ω/km at 20 °C (IEC 60228, as restated by cable makers), 5 m each way, 10 A:
  // 0.798 V, 6.65 % of 12 V.
  it('is 0.798 V, 6.65 %, over 5 m of 2.5 mm² and back at 10 A', () => {
    const form = new Sketch()
      .wire('b+', 'l+', 0.00798 * 5)
      .wire('l-', 'b-', 0.00798 * 5)
      .device('battery', 'b+', 'b-', -50, 100, 12)
      .device('load', 'l+', 'l-', -10, 0)
      .form()
    const drop = dropOf(form, 'load')
    expect(drop.volts).toBeCloseTo(0.798, 9)
    expect(drop.volts / drop.ofVolts).toBeCloseTo(0.0665, 9)
    expect(drop.parts.map((x) => [x.branch, x.volts])).toEqual([
      [0, expect.closeTo(0.399, 9)],
      [1, expect.closeTo(0.399, 9)],
    ])
  })

  it('counts shared feeders with every load on them, chargers resting', () => {
    const form = new Sketch()
      .wire('b+', 'bar', 0.01)
      .wire('bar', 'l+', 0.1)
      .device('battery', 'b+', '-', -50, 100, 12)
      .device('load', 'l+', '-', -5, 0)
      .device('heater', 'bar', '-', -20, 0)
      .device('charger', 'bar', '-', 0, 40)
      .form()
    expect(dropOf(form, 'load').volts).toBeCloseTo(25 * 0.01 + 5 * 0.1, 9)
  })

  it('is worst with a load off where another battery would have to come to its help', () => {
    // Battery A stands by the lamp, B at the far end with the winch. With the winch on, A feeds it and the lamp both
    // (B may be flat); the lamp as seen from B is worst when B alone feeds it and the winch beside A is off.
    const form = new Sketch()
      .wire('A+', 'middle', 0.01)
      .wire('middle', 'B+', 0.02)
      .device('A', 'A+', '-', -50, 60, 12)
      .device('B', 'B+', '-', -50, 10, 12)
      .device('lamp', 'middle', '-', -10, 0)
      .device('winch', 'B+', '-', -50, 0)
      .form()
    const drop = dropOf(form, 'lamp')
    expect(drop.supply).toEqual([0])
    expect(drop.volts).toBeCloseTo(0.6, 9)
    const weak = { ...form, devices: form.devices.map((d) => (d.id === 'A' ? { ...d, max: 0 } : d)) }
    expect(dropOf(weak, 'lamp').volts).toBeCloseTo(10 * 0.02, 9)
    expect(on(weak, dropOf(weak, 'lamp'))).toEqual(['lamp'])
  })

  it('goes through the links of a bank in series', () => {
    const form = new Sketch()
      .wire('m1', 'm2', 0.002)
      .wire('b+', 'l+', 0.01)
      .device('low', 'm1', '-', -50, 100, 12)
      .device('high', 'b+', 'm2', -50, 100, 12)
      .device('load', 'l+', '-', -10, 0)
      .device('tap', 'm2', '-', -30, 0)
      .form()
    const drop = dropOf(form, 'load')
    expect(drop.ofVolts).toBe(24)
    expect(drop.volts).toBeCloseTo(10 * 0.01 + 40 * 0.002, 9)
  })

  it('says what has none', () => {
    const p = prepare(
      new Sketch()
        .wire('b+', 'x', 1)
        .device('battery', 'b+', '-', -1, 1, 12)
        .device('joined', 'b+', 'x', -1, 0)
        .device('stray', 'p', 'q', -1, 0)
        .form(),
    )
    const drops = loadDrops(p)
    expect(drops(1)).toEqual({ device: 1, reason: 'terminals-joined' })
    expect(drops(2)).toEqual({ device: 2, reason: 'no-battery-feeds-it' })
  })

  it('is that of a linear program over the whole network, on 500 networks, and its parts add up', () => {
    const seen = { drops: 0, several: 0, endless: 0, someOff: 0 }
    for (let seed = 1; seed <= 500; seed++) {
      const form = scrambled(seed)
      const p = prepare(form)
      const bounds = sourcesOff(p)
      const whole = wholeNetwork(form)
      const kept = keepLp({
        ...whole,
        bounds: whole.bounds.map((b, i) => (i < p.min.length ? [bounds.min[i]!, bounds.max[i]!] : b)),
      })
      const drops = loadDrops(p)
      const volts = (node: string): number => p.min.length + p.resistance.length + p.nodeIndex.get(node)!
      for (const d of drawing(p)) {
        const drop = drops(d)
        const device = form.devices[d]!
        const direct = form.devices.filter(
          (b, i) =>
            b.emf !== undefined &&
            p.net[p.positive[i]!] === p.net[p.positive[d]!] &&
            p.net[p.negative[i]!] === p.net[p.negative[d]!],
        )
        if ('reason' in drop) {
          if (drop.reason === 'no-battery-feeds-it') expect(direct).toEqual([])
          continue
        }
        seen.drops++
        // Every way that the answer may choose from must be no worse: those through one battery, written out here.
        const ways = [drop.supply.map((b) => form.devices[b]!), ...direct.map((b) => [b])]
        const values = ways.map((way) => {
          const objective = new Float64Array(whole.bounds.length)
          const add = (node: string, sign: number): void => {
            objective[volts(node)]! += sign / 1000
          }
          way.forEach((b) => {
            add(b.positive, 1)
            add(b.negative, -1)
          })
          add(device.positive, -1)
          add(device.negative, 1)
          const answer = kept.optimise('max', objective)
          return answer.status === 'optimal' ? answer.value : Number.POSITIVE_INFINITY
        })
        if (direct.length > 1) seen.several++
        if (drop.volts === Number.POSITIVE_INFINITY) seen.endless++
        else {
          expect(Math.abs(drop.volts - values[0]!)).toBeLessThan(1e-6 * (1 + drop.volts))
          const sum = drop.parts.reduce((total, x) => total + x.volts, 0)
          expect(Math.abs(sum - drop.volts)).toBeLessThan(1e-9 * (1 + drop.volts))
          if (drawing(p).some((other) => drop.witness[other]! > p.min[other]! + 1e-9)) seen.someOff++
        }
        for (const value of values.slice(1)) {
          const rounding = Number.isFinite(value) ? 1e-6 * (1 + Math.abs(value)) : 0
          expect(drop.volts).toBeGreaterThanOrEqual(value - rounding)
        }
      }
      kept.dispose()
    }
    expect(seen.drops).toBeGreaterThan(400)
    expect(seen.several).toBeGreaterThan(40)
    expect(seen.someOff).toBeGreaterThan(100)
  })
})
