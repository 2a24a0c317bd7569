import { describe, expect, it } from 'vitest'
import { envelopes } from '../../../engine/calc/envelope'
import type { NetworkForm } from '../../../engine/calc/form'
import { prepare } from '../../../engine/calc/prepare'
import { currentsLp, extremeOf } from '../../reference/currents'
import { exactCurrent, exactShares } from '../../reference/exact'
import { randomNetwork } from '../../reference/networks'
import { tangledNetwork } from '../../reference/tangled'
import { vehicle } from '../../reference/vehicle'

/** The agreement asked for: 1e-6 of the figure, of 1 A where it is smaller. */
const AGREE = 1e-6

/**
 * Envelopes against the general-purpose solver HiGHS on the plain program. Where they differ, whole-number arithmetic
 * decides: device currents within their bounds that take the branch further than the solver's optimum, or on
 * without end, prove the engine right. (The solver takes gains below its tolerance of 1e-9 an amp for none.)
 */
function compare(form: NetworkForm, branches: readonly number[]): { figures: number; unlimited: number } {
  const p = prepare(form)
  const r = envelopes(p)
  const lp = currentsLp(form)
  let unlimited = 0
  expect(r.noAnswer.size).toBe(0)
  for (const e of branches)
    for (const side of ['min', 'max'] as const) {
      const got = r[side][e]!
      const want = extremeOf(lp, form, e, side)
      const close = AGREE * Math.max(1, Math.abs(want))
      if (!Number.isFinite(got)) unlimited++
      if (got === want || Math.abs(got - want) <= close) continue
      const sign = side === 'max' ? 1 : -1
      const where = `branch ${form.branches[e]!.id}, ${side}: ${got} against ${want}`
      const { devices, ray } = r.witness(e, side)
      const reached = sign * exactCurrent(form, exactShares(form), e, Number.isFinite(got) ? devices : ray)
      if (Number.isFinite(got)) {
        expect(reached, where).toBeGreaterThan(sign * want)
        expect(Math.abs(reached - sign * got), where).toBeLessThan(close)
      } else expect(reached, where).toBeGreaterThan(0)
    }
  lp.dispose()
  return { figures: 2 * branches.length, unlimited }
}

const all = (form: NetworkForm): number[] => form.branches.map((_, e) => e)

describe('envelopes against a general-purpose LP solver', () => {
  it('agrees on every branch of 600 random networks', () => {
    let figures = 0
    let unlimited = 0
    for (let seed = 1; seed <= 600; seed++) {
      const form = randomNetwork(seed)
      const found = compare(form, all(form))
      figures += found.figures
      unlimited += found.unlimited
    }
    expect(figures).toBeGreaterThan(20_000)
    expect(unlimited).toBeGreaterThan(300)
  })

  it('agrees on networks with larger meshes', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const form = randomNetwork(seed, { nodesPerNet: 30 })
      compare(form, all(form))
    }
  })

  it('agrees on networks with nets in rings of every kind', () => {
    for (let seed = 1; seed <= 250; seed++) {
      const form = tangledNetwork(seed)
      compare(form, all(form))
    }
  })

  it('agrees on every tenth branch of a design with 1,000', () => {
    const form = vehicle(3, 1000)
    compare(
      form,
      all(form).filter((e) => e % 10 === 0),
    )
  })
})
