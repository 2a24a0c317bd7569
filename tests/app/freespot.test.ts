import fc from 'fast-check'
import { expect, test } from 'vitest'
import { freeSpot } from '../../app/store/freespot'
import { boxOf } from '../../engine'
import { design } from '../build'

test('a free place is clear of every part by 10 mm, on the grid, and near where it was wished', () => {
  const mm = fc.integer({ min: 0, max: 120 }).map((n) => n * 2.5)
  fc.assert(
    fc.property(fc.array(fc.tuple(mm, mm), { maxLength: 12 }), mm, mm, (places, wx, wy) => {
      const d = places.reduce((b, [x, y], i) => b.part('lamp', `E${i + 1}`, {}, { x, y }), design()).build()
      const [x, y] = freeSpot(d, [wx, wy], 15, 10)
      expect([x % 2.5, y % 2.5].map(Math.abs)).toEqual([0, 0])
      for (const b of d.parts.map((p) => boxOf(p))) {
        const [across, down] = [Math.max(b.x - x - 15, x - b.x - b.w), Math.max(b.y - y - 10, y - b.y - b.h)]
        expect(Math.max(across, down)).toBeGreaterThanOrEqual(10)
      }
      if (places.length === 0) expect(Math.hypot(x + 7.5 - wx, y + 5 - wy)).toBeLessThan(2.5)
    }),
  )
})
