import { describe, expect, test } from 'vitest'
import { responses } from '../../../engine/math/response'
import { analyse, factorise, solve } from '../../../engine/math/sparse'
import { Random } from '../../reference/random'

/** A tree with some more edges, the first vertex held. */
function network(random: Random, n: number, more: number) {
  const ends = Array.from({ length: n - 1 }, (_, i) => [Math.floor(random.unit() * (i + 1)), i + 1] as const)
  for (let i = 0; i < more; i++) ends.push([random.whole(0, n - 1), random.whole(0, n - 1)])
  const tail = Int32Array.from(ends, ([u]) => u)
  const head = Int32Array.from(ends, ([, v]) => v)
  const held = new Uint8Array(n)
  held[0] = 1
  const conductance = Float64Array.from(ends, () => 10 ** random.whole(-3, 3) * (0.5 + random.unit()))
  return { tail, head, factor: factorise(analyse(n, tail, head, held), conductance) }
}

// The full solve of engine/math/sparse.ts is held against others in its own test; this one must not differ by a digit.
describe('responses', () => {
  test.each([0, 1, 5, 40])('as a full solve, with %i edges more than a tree', (more) => {
    for (let seed = 1; seed <= 60; seed++) {
      const random = new Random(seed)
      const n = random.whole(2, 60)
      const { tail, head, factor } = network(random, n, more)
      const between = responses(factor)
      const [into, outOf] = [random.whole(0, n - 1), random.whole(0, n - 1)]
      const push = new Float64Array(n)
      push[into]! += 1
      push[outOf]! -= 1
      const whole = solve(factor, push)
      const few = between(into, outOf)
      const found = new Set(few.edges())
      for (let v = 0; v < n; v++) expect(few.at(v) + 0, `seed ${seed}, vertex ${v}`).toBe(whole[v]! + 0)
      for (let e = 0; e < tail.length; e++)
        if (!found.has(e)) expect(whole[tail[e]!]!, `seed ${seed}, edge ${e}`).toBe(whole[head[e]!]!)
    }
  })

  test('one at a time: an older one refuses to be asked after the next', () => {
    const { factor } = network(new Random(5), 40, 5)
    const between = responses(factor)
    const older = between(1, 2)
    expect(older.at(1)).toBeTypeOf('number')
    between(3, 4)
    expect(() => older.at(1)).toThrow('after the next one')
  })

  test('on a tree hardly more edges come than lie between the two', () => {
    const { factor } = network(new Random(3), 2000, 0)
    expect(responses(factor)(1, 2).edges().length).toBeLessThan(100)
  })
})
