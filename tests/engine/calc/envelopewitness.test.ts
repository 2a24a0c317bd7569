import { describe, expect, it } from 'vitest'
import { type EnvelopeResult, envelopes } from '../../../engine/calc/envelope'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import type { DeviceCurrent } from '../../../engine/calc/witness'
import { type ExactShares, exactCurrent, exactShares } from '../../reference/exact'
import { randomNetwork } from '../../reference/networks'
import { tangledNetwork } from '../../reference/tangled'

interface Case {
  readonly form: NetworkForm
  readonly result: EnvelopeResult
  readonly shares: ExactShares
}

const caseOf = (form: NetworkForm): Case => ({
  form,
  result: envelopes(prepare(form)),
  shares: exactShares(form),
})

/** As much in as out in every net. */
function expectBalance({ result }: Case, currents: readonly DeviceCurrent[]): void {
  const p = result.prepared
  const sum = new Float64Array(p.netCount)
  for (const { device, current } of currents) {
    const d = p.deviceIndex.get(device)!
    sum[p.net[p.positive[d]!]!]! += current
    sum[p.net[p.negative[d]!]!]! -= current
  }
  for (const left of sum) expect(Math.abs(left)).toBeLessThan(1e-9)
}

function expectBounds({ result }: Case, currents: readonly DeviceCurrent[]): void {
  const p = result.prepared
  for (const { device, current } of currents) {
    const d = p.deviceIndex.get(device)!
    expect(current).not.toBe(0)
    expect(current).toBeGreaterThanOrEqual(p.min[d]! - 1e-9)
    expect(current).toBeLessThanOrEqual(p.max[d]! + 1e-9)
  }
}

function check(c: Case): void {
  const { form, result, shares } = c
  const p = result.prepared
  form.branches.forEach((_, e) => {
    for (const side of ['min', 'max'] as const) {
      const figure = result[side][e]!
      const { devices, ray } = result.witness(e, side)
      expectBalance(c, devices)
      expectBounds(c, devices)
      if (Number.isFinite(figure)) {
        expect(ray).toEqual([])
        const reached = exactCurrent(form, shares, e, devices)
        expect(Math.abs(reached - figure)).toBeLessThan(1e-6 * Math.max(1, Math.abs(figure)))
        continue
      }
      expectBalance(c, ray)
      for (const { device, current } of ray) {
        const d = p.deviceIndex.get(device)!
        expect(Number.isFinite(current > 0 ? p.max[d]! : p.min[d]!)).toBe(false)
      }
      const grows = exactCurrent(form, shares, e, ray)
      expect(side === 'max' ? grows : -grows).toBeGreaterThan(0)
    }
  })
}

describe('witnesses of worst cases', () => {
  it('bring about the figure by whole-number loop analysis, within bounds and balanced, on 300 networks', () => {
    for (let seed = 1; seed <= 300; seed++) check(caseOf(randomNetwork(seed)))
  })

  it('do so in larger meshes', () => {
    for (let seed = 301; seed <= 320; seed++) check(caseOf(randomNetwork(seed, { nodesPerNet: 20 })))
  })

  it('do so where nets form rings of every kind', () => {
    for (let seed = 1; seed <= 150; seed++) check(caseOf(tangledNetwork(seed)))
  })

  it('do not depend on what was asked before', () => {
    for (let seed = 1; seed <= 60; seed++) {
      const p = prepare(randomNetwork(seed))
      const forwards = envelopes(p)
      const backwards = envelopes(p)
      const list = p.form.branches.map((_, e) => e)
      const a = list.map((e) => forwards.witness(e, 'max'))
      const b = [...list].reverse().map((e) => backwards.witness(e, 'max'))
      expect(b.reverse()).toEqual(a)
    }
  })
})
