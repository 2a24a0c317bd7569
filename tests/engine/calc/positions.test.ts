import { describe, expect, it } from 'vitest'
import { answersOf } from '../../../engine/calc/answersof'
import { envelopes } from '../../../engine/calc/envelope'
import { prepare } from '../../../engine/calc/prepare'
import { protection } from '../../../engine/calc/protection'
import { returns } from '../../../engine/calc/returns'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'
import { randomDesign } from '../rules/randomdesign'
import { system } from '../rules/system'

/** Ring of bars with isolators, and a changeover: positions that matter. */
const ring = system({}, 'feed')
  .part('busbar', 'W5', { studs: 6, pole: 'positive', ratingA: 200 })
  .part('isolator', 'Q1', { ratingA: 150 })
  .part('isolator', 'Q2', { ratingA: 150 })
  .part('relay-changeover', 'K1', { ratingA: 40, breakRatingA: 30 })
  .part('lamp', 'E5', { currentA: 3 })
  .part('lamp', 'E6', { currentA: 4 })
  .join('F1.2', 'Q1.1', { size: '35mm2', lengthM: 0.4 })
  .join('F1.2', 'Q2.1', { size: '35mm2', lengthM: 1.1 })
  .join('Q1.2', 'W5.1l', { size: '35mm2', lengthM: 0.6 })
  .join('Q2.2', 'W5.2l', { size: '35mm2', lengthM: 0.9 })
  .join('W5.1r', 'F2.in', { size: '35mm2', lengthM: 1 })
  .join('F2.1', 'K1.30', { size: '2.5mm2', lengthM: 1 })
  .join('K1.87', 'E5.+', { size: '2.5mm2', lengthM: 1 })
  .join('K1.87a', 'E6.+', { size: '2.5mm2', lengthM: 1 })
  .join('E5.-', 'W2.4r', { size: '2.5mm2', lengthM: 1 })
  .join('E6.-', 'W2.5r', { size: '2.5mm2', lengthM: 1 })
  .build()

const designs = [
  ...DEMOS.map((d) => [d.file, d.make()] as const),
  ['ring', ring] as const,
  ...[3, 7, 11, 19].map(
    (seed) => [`random ${seed}`, randomDesign(new Random(seed), 40, 'sensible')] as const,
  ),
]

describe('answers of a design', () => {
  it.each(designs)('%s: the same as every position solved in full, the greatest of all taken', (_, d) => {
    const { answers, states } = answersOf(d)
    const full = states.map(({ any: { border } }) => {
      const p = prepare(border.form)
      return { p, envelope: envelopes(p), protection: protection(p), returns: returns(p) }
    })
    const most = (figure: (s: (typeof full)[number], e: number) => number, id: string): number =>
      full.reduce((max, s) => {
        const e = s.p.branchIndex.get(id)
        return e === undefined ? max : Math.max(max, figure(s, e))
      }, 0)
    const plain = (x: number | 'unlimited'): number => (x === 'unlimited' ? Number.POSITIVE_INFINITY : x)
    let compared = 0
    for (const [id, run] of answers.runs) {
      if ('value' in run.forward) {
        expect(plain(run.forward.value.amps)).toBeCloseTo(
          most((s, e) => s.envelope.max[e]!, id),
          9,
        )
        compared++
      }
      if ('value' in run.backward)
        expect(plain(run.backward.value.amps)).toBeCloseTo(
          most((s, e) => -s.envelope.min[e]!, id),
          9,
        )
      if ('value' in run.from)
        expect(plain(run.from.value.amps)).toBe(most((s, e) => s.protection.intoFrom[e]!, id))
      if ('value' in run.to)
        expect(plain(run.to.value.amps)).toBe(most((s, e) => s.protection.intoTo[e]!, id))
      if (run.sustained && 'value' in run.sustained) {
        const lasting = most((s, e) => {
          const x = s.returns.sustained(e)
          return 'sustained' in x ? plain(x.sustained) : 0
        }, id)
        expect(plain(run.sustained.value.amps)).toBeCloseTo(lasting, 9)
      }
    }
    expect(compared).toBeGreaterThan(0)
  })

  it('both isolators of a ring closed, either open: the other then carries all', () => {
    const { answers, states } = answersOf(ring)
    // Two throws of K1; in each Q1, Q2 and both opened.
    expect(states).toHaveLength(8)
    const leg = ring.conductors.find((c) => c.to.terminal === '1' && c.from.terminal === '2')!
    const run = answers.runs.get(leg.id)!
    // Loads of 10, 5 and the greater of 3 and 4 A; the charge of 20 A comes the other way.
    expect('value' in run.forward && run.forward.value.amps).toBeCloseTo(19, 9)
    expect('value' in run.backward && run.backward.value.amps).toBeCloseTo(20, 9)
    expect('value' in run.forward && run.forward.value.shared).toBe(false)
  })
})
