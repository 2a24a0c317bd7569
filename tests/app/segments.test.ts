import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { gripsOf, isHeld, pull, stretchAt } from '../../app/canvas/segments'
import { apply, type Design, readDesign, sceneOf, type XY } from '../../engine'
import { smallVan } from '../e2e/van'

const line: readonly XY[] = [
  [0, 0],
  [20, 0],
  [20, 30],
  [60, 30],
]

describe('pulling a stretch', () => {
  it('moves an inner stretch across itself, on the grid, and holds its corners', () => {
    expect(pull(line, 1, [11, 7], [])).toEqual({
      points: [
        [0, 0],
        [30, 0],
        [30, 30],
        [60, 30],
      ],
      held: [
        [30, 0],
        [30, 30],
      ],
    })
  })
  it('leaves a stretch at a terminal its way out', () => {
    const { points, held } = pull(line, 2, [0, 10], [])!
    expect(points).toEqual([
      [0, 0],
      [20, 0],
      [20, 40],
      [55, 40],
      [55, 30],
      [60, 30],
    ])
    expect(held).toEqual([
      [20, 40],
      [55, 40],
    ])
  })
  it('moves a straight line between two terminals, and one that is too short not at all', () => {
    expect(pull([line[0]!, [40, 0]], 0, [0, 5], [])!.held).toEqual([
      [5, 5],
      [35, 5],
    ])
    expect(pull([line[0]!, [10, 0]], 0, [0, 5], [])).toBeNull()
    expect(pull(line, 1, [0.4, 90], [])).toBeNull()
  })
  it('keeps what was held before', () => {
    const first = pull(line, 1, [10, 0], [])!
    const second = pull(first.points, 2, [0, 10], first.held)!
    expect(second.held).toEqual([
      [30, 0],
      [30, 40],
      [55, 40],
    ])
  })
  it('gives right-angle lines with the same ends', () => {
    fc.assert(
      fc.property(fc.nat(2), fc.integer({ min: -40, max: 40 }), (k, off) => {
        const moved = pull(line, k, [off, off], [])
        if (!moved) return true
        const { points, held } = moved
        const right = points.every(
          (p, i) => i === 0 || p[0] === points[i - 1]![0] || p[1] === points[i - 1]![1],
        )
        return right && points[0] === line[0] && points.at(-1) === line[3] && isHeld(points, held)
      }),
    )
  })
  it('finds the stretch under the pointer, and shows where to take hold', () => {
    expect(stretchAt(line, [21, 12])).toBe(1)
    expect(stretchAt(line, [50, 29])).toBe(2)
    expect(gripsOf(line).map((g) => g.at)).toEqual([
      [10, 0],
      [20, 15],
      [40, 30],
    ])
  })
})

it('the layout goes the way that was laid by hand, and keeps it when another part moves', () => {
  const design: Design = readDesign(smallVan()).design!
  const pump = design.conductors.find((c) => c.number === 'W5')!
  const way = (d: Design) => sceneOf(d, null, 'both-poles').conductors.find((c) => c.id === pump.id)!.points
  const before = way(design)
  const moves = gripsOf(before).flatMap(({ at }) =>
    [-10, 10].flatMap((off) => pull(before, stretchAt(before, at), [off, off], []) ?? []),
  )
  const honoured = moves.filter(({ held }) => {
    const path = held.map(([x, y]) => ({ x, y }))
    const edit = { do: 'conductor', conductors: [pump.id], set: { path } } as const
    const result = apply(design, edit)
    if (result.refused || !isHeld(way(result.design), held)) return false
    const lamp = result.design.parts.find((p) => p.designation === 'E1')!
    const next = apply(result.design, { do: 'move', to: [{ part: lamp.id, x: lamp.x + 20, y: lamp.y - 20 }] })
    return !next.refused && isHeld(way(next.design), held)
  })
  expect(honoured.length).toBeGreaterThan(0)
})
