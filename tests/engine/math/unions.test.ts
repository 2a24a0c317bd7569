import { describe, expect, it } from 'vitest'
import { components } from '../../../engine/math/components'
import { graphOf } from '../../../engine/math/graph'
import { Unions } from '../../../engine/math/unions'
import { Random } from '../../reference/random'

describe('unions', () => {
  it('agree with the components of the same joins, found by a walk', () => {
    for (let seed = 1; seed <= 50; seed++) {
      const random = new Random(seed)
      const n = random.whole(2, 40)
      const joins = Array.from({ length: random.whole(0, 50) }, () => [
        random.whole(0, n - 1),
        random.whole(0, n - 1),
      ])
      const unions = new Unions()
      for (let v = 0; v < n; v++) unions.numberOf(`k${v}`)
      for (const [a, b] of joins) unions.join(`k${a}`, `k${b}`)
      const ends = (i: 0 | 1): Int32Array => Int32Array.from(joins, (j) => j[i]!)
      const { of } = components(graphOf(n, ends(0), ends(1)))
      for (let a = 0; a < n; a++)
        for (let b = 0; b < n; b++)
          expect(unions.numberOf(`k${a}`) === unions.numberOf(`k${b}`)).toBe(of[a] === of[b])
    }
  })

  it('go by the name of the set that was named first, whatever the keys are called', () => {
    const unions = new Unions()
    unions.join('a', 'b')
    unions.join('__proto__', '10')
    unions.join('b', '__proto__')
    expect([...unions.names()]).toEqual([
      ['a', 'a'],
      ['b', 'a'],
      ['__proto__', 'a'],
      ['10', 'a'],
    ])
  })

  it('a chain of a hundred thousand', () => {
    const unions = new Unions()
    for (let i = 1; i < 100_000; i++) unions.join(`${i - 1}`, `${i}`)
    expect(unions.nameOf('99999')).toBe('0')
  })
})
