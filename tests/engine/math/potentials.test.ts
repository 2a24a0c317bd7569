import { describe, expect, it } from 'vitest'
import { Potentials } from '../../../engine/math/potentials'
import { Random } from '../../reference/random'

describe('potentials', () => {
  it('add up along what is joined, either way', () => {
    const p = new Potentials(4)
    p.join(1, 0, 12)
    p.join(2, 1, 13)
    expect(p.across(2, 0)).toBe(25)
    expect(p.across(0, 2)).toBe(-25)
    expect(p.across(3, 0)).toBeUndefined()
    expect(p.across(3, 3)).toBe(0)
  })

  it('keep the first figure of a ring', () => {
    const p = new Potentials(2)
    p.join(1, 0, 12)
    p.join(1, 0, 24)
    p.join(0, 1, 5)
    expect(p.across(1, 0)).toBe(12)
  })

  it('agree with heights that are known beforehand, in any order of joining', () => {
    const random = new Random(3)
    for (let run = 0; run < 50; run++) {
      const n = random.whole(2, 60)
      const height = Array.from({ length: n }, () => random.whole(-50, 50))
      const p = new Potentials(n)
      for (let i = 0; i < 2 * n; i++) {
        const a = random.whole(0, n - 1)
        const b = random.whole(0, n - 1)
        p.join(a, b, height[a]! - height[b]!)
        expect(p.across(a, b)).toBe(height[a]! - height[b]!)
        const c = random.whole(0, n - 1)
        expect([undefined, height[a]! - height[c]!]).toContain(p.across(a, c))
      }
    }
  })
})
