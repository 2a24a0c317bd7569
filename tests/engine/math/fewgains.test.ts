import { describe, expect, test } from 'vitest'
import { fewGains } from '../../../engine/math/fewgains'
import { greatestFlow } from '../../../engine/math/unlimited'
import { Random } from '../../reference/random'

/** Arcs between few vertices, so that many share a pair; some without a limit on one side. */
function network(random: Random, vertices: number, arcs: number, endless: number) {
  const end = (): number => random.whole(0, vertices - 1)
  const bound = (): number =>
    random.unit() < endless ? Number.POSITIVE_INFINITY : random.unit() < 0.4 ? 0 : random.whole(1, 50)
  return {
    from: Int32Array.from({ length: arcs }, end),
    to: Int32Array.from({ length: arcs }, end),
    low: Float64Array.from({ length: arcs }, () => 0 - bound()),
    high: Float64Array.from({ length: arcs }, bound),
  }
}

// The plain method is held against a general-purpose solver in unlimited.test.ts and the envelope tests.
describe('a figure of few arcs', () => {
  test.each([0, 0.15])('has the flows of the plain method (%f of the bounds without limit)', (endless) => {
    let told = 0
    for (let seed = 1; seed <= 800; seed++) {
      const random = new Random(seed)
      const vertices = random.whole(2, 5)
      const { from, to, low, high } = network(random, vertices, random.whole(1, 14), endless)
      const gains = new Map<number, number>()
      for (let i = 0; i < from.length; i++) if (random.unit() < 0.3) gains.set(i, random.whole(-2, 2))
      const few = fewGains(vertices, from, to, low, high)(gains)
      if (!few) continue
      told++
      const plain = greatestFlow(vertices, from, to, low, high)(dense(from.length, gains))!
      expect(few.value, `seed ${seed}`).toBeCloseTo(plain.value, 9)
      plain.x.forEach((x, i) => {
        expect(few.flows.get(i) ?? 0, `seed ${seed}, arc ${i}`).toBeCloseTo(x, 6)
      })
    }
    expect(told).toBeGreaterThan(200)
  })

  test('tells nothing where too little beside them balances', () => {
    const [from, to] = [Int32Array.of(0, 0), Int32Array.of(1, 1)]
    const answer = fewGains(2, from, to, Float64Array.of(-5, 0), Float64Array.of(0, 3))
    expect(answer(new Map([[0, -1]]))).toBeUndefined()
    expect(answer(new Map([[0, 1]]))?.value).toBe(0)
  })
})

function dense(length: number, gains: ReadonlyMap<number, number>): Float64Array {
  const objective = new Float64Array(length)
  for (const [i, gain] of gains) objective[i] = gain
  return objective
}
