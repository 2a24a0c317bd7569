import { describe, expect, it } from 'vitest'
import { envelopes } from '../../../engine/calc/envelope'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { barThrough } from '../../../engine/calc/through'
import { currentsLp } from '../../reference/currents'
import { exactCurrent, exactShares } from '../../reference/exact'
import type { KeptLp } from '../../reference/highs'
import { randomNetwork } from '../../reference/networks'

/** Columns of the plain program that end on a node, with the sign of their inflow. */
function ends(form: NetworkForm, node: string): { column: number; sign: number }[] {
  const list: { column: number; sign: number }[] = []
  form.devices.forEach((d, i) => {
    if (d.positive === node) list.push({ column: i, sign: 1 })
    if (d.negative === node) list.push({ column: i, sign: -1 })
  })
  form.branches.forEach((b, e) => {
    if (b.from === b.to) return
    if (b.to === node) list.push({ column: form.devices.length + e, sign: 1 })
    if (b.from === node) list.push({ column: form.devices.length + e, sign: -1 })
  })
  return list
}

/** By trying every mix of signs: the greatest inflow of every subset of the joins. */
function bySubsets(form: NetworkForm, lp: KeptLp, node: string): number {
  const joins = ends(form, node)
  let most = 0
  for (let subset = 0; subset < 2 ** joins.length; subset++) {
    const objective = new Float64Array(form.devices.length + form.branches.length)
    joins.forEach((j, i) => {
      if ((subset >> i) & 1) objective[j.column]! += j.sign
    })
    const answer = lp.optimise('max', objective)
    if (answer.status === 'unbounded') return Number.POSITIVE_INFINITY
    if (answer.status === 'optimal') most = Math.max(most, answer.value)
  }
  return most
}

describe('current through a bar', () => {
  it('is what comes in, worked by hand', () => {
    // Battery ±100 A, charger 0..30 A, loads −60 A and −20 A on one bar; negatives on another.
    // Discharging: 80 A in (50 battery + 30 charger, or 80 battery), 80 A out. Charging: 30 A. So 80 A.
    const form: NetworkForm = {
      nodes: ['plus', 'minus'],
      branches: [],
      devices: [
        {
          id: 'battery',
          positive: 'plus',
          negative: 'minus',
          min: -100,
          max: 100,
          sustainedFault: 'unlimited',
        },
        { id: 'charger', positive: 'plus', negative: 'minus', min: 0, max: 30, sustainedFault: 30 },
        { id: 'inverter', positive: 'plus', negative: 'minus', min: -60, max: 0, sustainedFault: 0 },
        { id: 'lamps', positive: 'plus', negative: 'minus', min: -20, max: 0, sustainedFault: 0 },
      ],
    }
    const p = prepare(form)
    const found = barThrough(p, envelopes(p), 0)
    expect(found).toMatchObject({ max: 80 })
  })

  it('takes the better of two directions where the chord of a two-way join misleads', () => {
    // Two banks that may charge each other: A −10..50 A, B −40..20 A, and a load of 25 A.
    // All out of A: 50 A in, 40 to B, 10 to the load. Out of B: 20 in. With A + B to the load: 25. So 50 A.
    const form: NetworkForm = {
      nodes: ['bar', 'minus'],
      branches: [],
      devices: [
        { id: 'A', positive: 'bar', negative: 'minus', min: -10, max: 50, sustainedFault: 'unlimited' },
        { id: 'B', positive: 'bar', negative: 'minus', min: -40, max: 20, sustainedFault: 'unlimited' },
        { id: 'load', positive: 'bar', negative: 'minus', min: -25, max: 0, sustainedFault: 0 },
      ],
    }
    const p = prepare(form)
    const found = barThrough(p, envelopes(p), 0)
    expect(found).toMatchObject({ max: 50 })
  })

  it('agrees with every mix of signs by a general-purpose solver, and its witness reaches it', () => {
    let bars = 0
    for (let seed = 1; seed <= 150; seed++) {
      const form = randomNetwork(seed)
      const p = prepare(form)
      const r = envelopes(p)
      const lp = currentsLp(form)
      const shares = exactShares(form)
      form.nodes.forEach((id, node) => {
        const joins = ends(form, id)
        if (joins.length < 2 || joins.length > 7) return
        const found = barThrough(p, r, node)
        if ('notChecked' in found) throw new Error(found.notChecked)
        const want = bySubsets(form, lp, id)
        bars++
        if (found.max === 'unlimited') {
          expect(want, `seed ${seed}, ${id}`).toBe(Number.POSITIVE_INFINITY)
          return
        }
        expect(Math.abs(found.max - want), `seed ${seed}, ${id}: ${found.max} against ${want}`).toBeLessThan(
          1e-6 * Math.max(1, want),
        )
        const own = new Map(found.witness.devices.map((d) => [d.device, d.current]))
        let inflow = 0
        for (const { column, sign } of joins) {
          const branch = column - form.devices.length
          const current =
            branch < 0
              ? (own.get(form.devices[column]!.id) ?? 0)
              : exactCurrent(form, shares, branch, found.witness.devices)
          inflow += Math.max(0, sign * current)
        }
        expect(Math.abs(inflow - found.max)).toBeLessThan(1e-6 * Math.max(1, found.max))
      })
      lp.dispose()
    }
    expect(bars).toBeGreaterThan(1000)
  })

  it('says so when too many joins may run either way', () => {
    // 30 batteries alike on one bar: every half against every other half, and no bound tells them apart.
    const form: NetworkForm = {
      nodes: ['bar', 'minus'],
      branches: [],
      devices: Array.from({ length: 31 }, (_, i) => ({
        id: `b${i}`,
        positive: 'bar',
        negative: 'minus',
        min: -100,
        max: 100,
        sustainedFault: 'unlimited' as const,
      })),
    }
    const p = prepare(form)
    expect(barThrough(p, envelopes(p), 0)).toEqual({ notChecked: 'too-many-two-way-joins' })
  })
})
