import { describe, expect, it } from 'vitest'
import { placeLabels } from '../../../engine/sheets/labels/place'
import type { LabelRequest, PlacedLabel, Stretch } from '../../../engine/sheets/labels/request'
import { routeAll } from '../../../engine/sheets/route/route'
import { layoutQuality } from '../../bench/layoutquality'
import { randomSheet } from '../../bench/randomsheet'

const level = (x1: number, x2: number, y: number): Stretch => ({ x1, y1: y, x2, y2: y })
const upright = (x: number, y1: number, y2: number): Stretch => ({ x1: x, y1, x2: x, y2 })
const label = (id: string, near: readonly Stretch[], more: Partial<LabelRequest> = {}): LabelRequest => ({
  id,
  w: 12,
  h: 2,
  near,
  priority: 1,
  ...more,
})
const NOTHING = { boxes: [], segments: [] }

const stretchesOf = (points: readonly { x: number; y: number }[]): Stretch[] =>
  points.slice(1).map((b, k) => ({ x1: points[k]!.x, y1: points[k]!.y, x2: b.x, y2: b.y }))

/** Does a leader run through one of the rectangles, by more than a touch at its own ends? */
function runsThrough([a, b]: NonNullable<PlacedLabel['leader']>, rect: PlacedLabel): boolean {
  for (let k = 1; k < 100; k++) {
    const x = a.x + ((b.x - a.x) * k) / 100
    const y = a.y + ((b.y - a.y) * k) / 100
    if (x > rect.x && x < rect.x + rect.w && y > rect.y && y < rect.y + rect.h) return true
  }
  return false
}

describe('labels on random sheets', () => {
  for (const seed of [1, 2, 3, 4])
    it(`lie on nothing, each beside its own or led to it (seed ${seed})`, () => {
      const { boxes, requests } = randomSheet(seed, 25, 40, 0.85)
      const { routes } = routeAll(boxes, requests)
      const ways = requests.map((r, i) => ({ ...r, points: routes[i]!.points }))
      const labels = [
        ...boxes.map((b) =>
          label(b.id, [level(b.x, b.x + b.w, b.y), level(b.x, b.x + b.w, b.y + b.h)], { h: 4, priority: 2 }),
        ),
        ...ways.map((w) => label(w.id, stretchesOf(w.points))),
      ]
      const obstacles = { boxes, segments: ways.flatMap((w) => stretchesOf(w.points)) }
      const placed = placeLabels(labels, obstacles)
      expect(placed.map((p) => p.id)).toEqual(labels.map((l) => l.id))
      expect(placed.every((p) => p.placed)).toBe(true)
      expect(layoutQuality(boxes, ways, placed).labelCollisions).toBe(0)
      placed.forEach((p, i) => {
        expect([p.w, p.h]).toEqual(p.turn === 0 ? [12, labels[i]!.h] : [labels[i]!.h, 12])
        if (p.leader) for (const other of placed) expect(runsThrough(p.leader, other)).toBe(false)
        else expect(labels[i]!.near.some((s) => gap(p, s) < 1)).toBe(true)
      })
      expect(placeLabels(labels, obstacles)).toEqual(placed)
    })
})

/** Distance between a label and a stretch. */
function gap(p: PlacedLabel, s: Stretch): number {
  const dx = Math.max(0, Math.min(s.x1, s.x2) - (p.x + p.w), p.x - Math.max(s.x1, s.x2))
  const dy = Math.max(0, Math.min(s.y1, s.y2) - (p.y + p.h), p.y - Math.max(s.y1, s.y2))
  return Math.hypot(dx, dy)
}

describe('where a label stands', () => {
  it('in the middle above a level stretch, turned to the left of an upright one', () => {
    const [a] = placeLabels([label('a', [level(0, 40, 10)])], NOTHING)
    expect(a).toMatchObject({ x: 14, w: 12, h: 2, turn: 0, placed: true })
    expect(a!.y + a!.h).toBeLessThan(10)
    const [b] = placeLabels([label('b', [upright(10, 0, 40)])], NOTHING)
    expect(b).toMatchObject({ y: 14, w: 2, h: 12, turn: 90, placed: true })
    expect(b!.x + b!.w).toBeLessThan(10)
  })

  it('on the long stretch rather than on the short one', () => {
    const [a] = placeLabels([label('a', [level(0, 5, 0), upright(5, 0, 60)])], NOTHING)
    expect(a!.turn).toBe(90)
  })

  it('only on the sides that are allowed', () => {
    const [a] = placeLabels([label('a', [level(0, 40, 10)], { sides: ['below'] })], NOTHING)
    expect(a!.y).toBeGreaterThan(10)
    const point = { x1: 20, y1: 20, x2: 20, y2: 20 }
    const [b] = placeLabels([label('b', [point], { sides: ['right'] })], NOTHING)
    expect(b!.x).toBeGreaterThan(20)
    expect(b!.y).toBe(19)
  })

  it('the higher priority has the better place', () => {
    const near = [level(0, 12, 10)]
    const [low, high] = placeLabels([label('low', near), label('high', near, { priority: 5 })], NOTHING)
    expect(high).toMatchObject({ x: 0, y: 7.4 })
    expect(low!.y).toBeGreaterThan(10)
  })

  it('farther off with a leader to its line where the line is hemmed in', () => {
    const boxes = [
      { x: -20, y: 0, w: 80, h: 9 },
      { x: -20, y: 11, w: 80, h: 9 },
    ]
    const [a] = placeLabels([label('a', [level(0, 40, 10)])], { boxes, segments: [level(0, 40, 10)] })
    expect(a!.placed).toBe(true)
    expect(a!.leader).toBeDefined()
    expect(a!.leader![1].y).toBe(10)
    for (const b of boxes) expect(runsThrough(a!.leader!, { ...a!, ...b })).toBe(false)
  })

  it('is reported where there is no room at all', () => {
    const boxes = [{ x: -500, y: -500, w: 1000, h: 1000 }]
    const [a] = placeLabels([label('a', [level(0, 40, 10)])], { boxes, segments: [] })
    expect(a!.placed).toBe(false)
  })
})
