import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type End, elbow, stretched, wayOf } from '../../app/canvas/follow'
import type { Part, SceneConductor, Side, XY } from '../../engine'

const part = (id: string, x: number, y: number): Part => ({
  id,
  kind: 'lamp',
  designation: id,
  name: '',
  location: '',
  x,
  y,
  turn: 0,
  mirrored: false,
  values: {},
})

const end = (p: Part, at: XY, dx: number, side: Side): End => ({
  part: p,
  at,
  terminal: [at[0] + dx, at[1] + 5],
  side,
})

const a = part('a', 0, 0)
const b = part('b', 100, 40)
const laid: SceneConductor = {
  id: 'w1',
  from: { part: 'a', terminal: '+' },
  to: { part: 'b', terminal: '+' },
  points: [
    [10, 5],
    [60, 5],
    [60, 45],
    [100, 45],
  ],
  nature: 'positive',
  withReturn: null,
  routed: true,
}
const before = (id: string) => (id === 'a' ? a : id === 'b' ? b : undefined)

describe('how a conductor follows', () => {
  it('keeps the laid-out way when nothing moved', () => {
    const way = wayOf(laid, end(a, [0, 0], 10, 'right'), end(b, [100, 40], 0, 'left'), before)
    expect(way).toEqual({ points: laid.points, exact: true })
  })

  it('moves the whole way when both ends moved alike', () => {
    const way = wayOf(laid, end(a, [5, 5], 10, 'right'), end(b, [105, 45], 0, 'left'), before)
    expect(way.exact).toBe(false)
    expect(way.points).toEqual(laid.points.map(([x, y]) => [x + 5, y + 5]))
  })

  it('stretches the laid-out way to a part that moved alone', () => {
    const way = wayOf(laid, end(a, [0, 0], 10, 'right'), end(b, [120, 70], 0, 'left'), before)
    expect(way).toEqual({
      points: [
        [10, 5],
        [60, 5],
        [60, 75],
        [120, 75],
      ],
      exact: false,
    })
  })

  it('moves the last corner along where the part comes too near to it', () => {
    expect(stretched(laid.points, [-42, 10])).toEqual([
      [10, 5],
      [18, 5],
      [18, 55],
      [58, 55],
    ])
  })

  it('does not let a stretched way turn back at a terminal', () => {
    expect(stretched(laid.points, [-95, 10])).toBeNull()
  })

  it('stretches at right angles, and leaves both terminals as before', () => {
    const mm = fc.integer({ min: -60, max: 60 })
    const sign = (p: XY, q: XY) => [Math.sign(q[0] - p[0]), Math.sign(q[1] - p[1])]
    fc.assert(
      fc.property(mm, mm, (dx, dy) => {
        const way = stretched(laid.points, [dx, dy])
        if (!way) return
        expect(way.at(-1)).toEqual([100 + dx, 45 + dy])
        expect(way[0]).toEqual(laid.points[0])
        for (let i = 1; i < way.length; i++)
          expect(way[i]![0] === way[i - 1]![0] || way[i]![1] === way[i - 1]![1]).toBe(true)
        expect(sign(way[0]!, way[1]!)).toEqual([1, 0])
        expect(sign(way.at(-2)!, way.at(-1)!)).toEqual([1, 0])
      }),
    )
  })

  it('goes by the terminals when a part was turned or is new', () => {
    const turned = { ...b, turn: 90 as const }
    const way = wayOf(laid, end(a, [0, 0], 10, 'right'), end(turned, [100, 40], 3, 'up'), before)
    expect(way.points.at(-1)).toEqual([103, 45])
    expect(wayOf(undefined, end(a, [0, 0], 10, 'right'), end(b, [100, 40], 0, 'left'), before).exact).toBe(
      false,
    )
  })

  it('always runs at right angles and joins both ends', () => {
    const mm = fc.integer({ min: -200, max: 200 })
    const side = fc.constantFrom<Side>('left', 'right', 'up', 'down')
    fc.assert(
      fc.property(mm, mm, side, mm, mm, side, (x1, y1, s1, x2, y2, s2) => {
        const way = elbow([x1, y1], s1, [x2, y2], s2)
        expect(way[0]).toEqual([x1, y1])
        expect(way.at(-1)).toEqual([x2, y2])
        for (let i = 1; i < way.length; i++)
          expect(way[i]![0] === way[i - 1]![0] || way[i]![1] === way[i - 1]![1]).toBe(true)
      }),
    )
  })
})
