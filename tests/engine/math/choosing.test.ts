import { describe, expect, test } from 'vitest'
import type { Choosing, Limit, Options } from '../../../engine/math/choice'
import { choose } from '../../../engine/math/choosing'
import { solveLp } from '../../reference/highs'
import { Random } from '../../reference/random'

/** A choice of a dozen steps: cost as the step, use as its inverse, some of the first steps left out. */
function options(r: Random, size: number): Options {
  const steps = [1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50].slice(r.whole(0, 5))
  return { cost: steps.map((s) => s * size), use: steps.map((s) => size / s) }
}

/** Limits that share three choices, and some of them one of a few more; `crossing`: of two sorts that do not nest. */
function random(seed: number, crossing: boolean): Choosing {
  const r = new Random(seed)
  const choices: Options[] = []
  const add = (size: number): number => choices.push(options(r, size)) - 1
  const trunk = [add(r.between(0.3, 2)), add(r.between(0.3, 2)), add(r.between(0.3, 2))]
  const firsts = Array.from({ length: r.whole(1, 3) }, () => add(r.between(0.3, 4)))
  const seconds = Array.from({ length: crossing ? r.whole(2, 3) : firsts.length }, () =>
    add(r.between(0.3, 4)),
  )
  const heavy = Array.from({ length: 4 }, () => r.between(5, 40))
  const limits = Array.from({ length: r.whole(2, 6) }, (): Limit => {
    const first = r.whole(0, firsts.length - 1)
    const second = crossing ? r.whole(0, seconds.length - 1) : first
    const own = r.between(1, 12)
    return {
      most: r.between(8, 40),
      choices: [...trunk, firsts[first]!, seconds[second]!, add(r.between(1, 6)), add(r.between(1, 6))],
      factors: [
        heavy[0]!,
        heavy[0]!,
        heavy[0]!,
        heavy[1 + first]!,
        crossing ? heavy[second]! : heavy[1 + first]!,
        own,
        own,
      ],
    }
  })
  return { choices, limits }
}

function byProgram({ choices, limits }: Choosing) {
  const start: number[] = []
  choices.reduce((at, c, i) => {
    start[i] = at
    return at + c.cost.length
  }, 0)
  const columns = (c: number): number[] => choices[c]!.cost.map((_, k) => start[c]! + k)
  const objective = choices.flatMap((c) => [...c.cost])
  return solveLp({
    sense: 'min',
    objective,
    rows: [
      ...choices.map((c, i) => ({ lower: 1, upper: 1, columns: columns(i), values: c.cost.map(() => 1) })),
      ...limits.map((l) => ({
        lower: Number.NEGATIVE_INFINITY,
        upper: l.most,
        columns: l.choices.flatMap(columns),
        values: l.choices.flatMap((c, i) => choices[c]!.use.map((u) => u * l.factors[i]!)),
      })),
    ],
    bounds: objective.map(() => [0, 1] as const),
    whole: objective.map((_, j) => j),
  })
}

const usedOf = ({ choices }: Choosing, limit: Limit, pick: Int32Array): number =>
  limit.choices.reduce((sum, c, i) => sum + limit.factors[i]! * choices[c]!.use[pick[c]!]!, 0)

describe.each([false, true])('against HiGHS as an integer program, sets that cross: %s', (crossing) => {
  test.each(Array.from({ length: 40 }, (_, i) => i + 1))(
    'random %i',
    (seed) => {
      const problem = random(seed, crossing)
      const ours = choose(problem)
      const theirs = byProgram(problem)
      if (theirs.status !== 'optimal') {
        expect(ours).toHaveProperty('impossible')
        return
      }
      if ('impossible' in ours) throw new Error('there is an answer')
      const cost = problem.choices.reduce((sum, c, i) => sum + c.cost[ours.pick[i]!]!, 0)
      expect(ours.cost).toBeCloseTo(cost, 9)
      for (const limit of problem.limits)
        expect(usedOf(problem, limit, ours.pick)).toBeLessThanOrEqual(limit.most * (1 + 1e-9))
      expect(ours.cost).toBeLessThanOrEqual(theirs.value * (crossing ? 1.002 : 1 + 1e-9))
      expect(ours.atLeast).toBeLessThanOrEqual(theirs.value * (1 + 1e-9))
      expect(ours.atLeast).toBeGreaterThanOrEqual(theirs.value * 0.9975)
    },
    60_000,
  )
})

describe('edges', () => {
  const two: Options = { cost: [1, 5], use: [4, 1] }

  test('nothing to choose', () => {
    expect(choose({ choices: [], limits: [] })).toMatchObject({ cost: 0 })
  })

  test('without limits the cheapest', () => {
    expect(choose({ choices: [two, two], limits: [] })).toMatchObject({ cost: 2, atLeast: 2 })
  })

  test('a limit met exactly holds', () => {
    const problem: Choosing = { choices: [two, two], limits: [{ most: 5, choices: [0, 1], factors: [1, 1] }] }
    expect(choose(problem)).toMatchObject({ cost: 6 })
  })

  test('names the limits that cannot be kept', () => {
    const limit = (most: number): Limit => ({ most, choices: [0], factors: [1] })
    expect(choose({ choices: [two], limits: [limit(2), limit(0.5), limit(-1)] })).toEqual({
      impossible: [1, 2],
    })
  })

  test('a chain of a thousand choices in one limit', () => {
    const many = Array.from({ length: 1000 }, () => two)
    const limit = { most: 2500, choices: many.map((_, i) => i), factors: many.map(() => 1) }
    // Each dear one saves 3 for 4: 500 of them are needed.
    expect(choose({ choices: many, limits: [limit] })).toMatchObject({ cost: 500 * 1 + 500 * 5 })
  })
})
