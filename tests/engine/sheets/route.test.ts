import { describe, expect, it } from 'vitest'
import type { Point, RouteBox, Routed, RoutePort, RouteRequest } from '../../../engine/sheets/route/request'
import { routeAll } from '../../../engine/sheets/route/route'
import { sheetOf } from '../../../engine/sheets/route/sheet'
import { freeWay, targetOf } from '../../../engine/sheets/route/way'
import { layoutQuality } from '../../bench/layoutquality'
import { randomSheet } from '../../bench/randomsheet'
import { cheapestWay, PER_MM, priceOf } from '../../reference/cheapestway'
import { Random } from '../../reference/random'

const quality = (boxes: readonly RouteBox[], requests: readonly RouteRequest[], routes: readonly Routed[]) =>
  layoutQuality(
    boxes,
    requests.map((r, i) => ({ ...r, points: routes[i]!.points })),
  )
const NEAR = 0.85
const CLEAN = { overlaps: 0, tooNear: 0, touches: 0, passes: 0 }
const OUT = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] } as const

/** Does the way leave this port to its side, straight, by 2.5 mm at least? */
function leavesWell(port: RoutePort, first: Point, second: Point): boolean {
  const [dx, dy] = OUT[port.side]
  const along = (second.x - first.x) * dx + (second.y - first.y) * dy
  const aside = (second.x - first.x) * dy + (second.y - first.y) * dx
  return first.x === port.x && first.y === port.y && along >= 2.5 && aside === 0
}

const box = (id: string, x: number, y: number, w = 15, h = 12.5): RouteBox => ({ id, x, y, w, h })
const port = (x: number, y: number, side: RoutePort['side']): RoutePort => ({ x, y, side })

describe('routes of random sheets', () => {
  for (const [seed, parts, conductors] of [
    [1, 12, 20],
    [2, 20, 40],
    [3, 30, 60],
    [4, 30, 75],
    [5, 42, 90],
    [6, 9, 30],
  ] as const)
    it(`${conductors} conductors of ${parts} parts: no overlap, no pass, right angles, ends at ports (seed ${seed})`, () => {
      const { boxes, requests } = randomSheet(seed, parts, conductors, seed % 2 === 0 ? NEAR : 0)
      const { routes, stats, crossings } = routeAll(boxes, requests)
      expect(routes.every((r) => r.ok)).toBe(true)
      expect(stats.failed).toBe(0)
      const q = quality(boxes, requests, routes)
      expect(q).toMatchObject(CLEAN)
      expect(crossings).toHaveLength(q.crossings)
      expect(stats).toMatchObject({ crossings: q.crossings, bends: q.bends, length: q.lengthMm })
      routes.forEach(({ id, points }, i) => {
        const { from, to } = requests[i]!
        expect(id).toBe(requests[i]!.id)
        expect(leavesWell(from, points[0]!, points[1]!)).toBe(true)
        expect(leavesWell(to, points.at(-1)!, points.at(-2)!)).toBe(true)
        points.slice(1).forEach((b, k) => {
          const a = points[k]!
          expect(Number(a.x !== b.x) + Number(a.y !== b.y)).toBe(1)
        })
      })
    })

  it('gives the same answer again, and keeps all of it when nothing has changed', () => {
    const { boxes, requests } = randomSheet(7, 25, 50, NEAR)
    const once = routeAll(boxes, requests)
    expect(routeAll(boxes, requests)).toEqual(once)
    const again = routeAll(boxes, requests, once.routes)
    expect(again.routes).toEqual(once.routes)
    expect(again.crossings).toEqual(once.crossings)
    expect(again.joins).toEqual(once.joins)
    expect(again.stats.kept).toBe(requests.length)
  })
})

describe('moving one part', () => {
  it('changes only conductors that end at it or that it comes to lie near', () => {
    for (let seed = 11; seed <= 18; seed++) {
      const { boxes, requests } = randomSheet(seed, 25, 45, NEAR)
      const before = routeAll(boxes, requests).routes
      const random = new Random(seed)
      const k = random.whole(0, boxes.length - 1)
      const [dx, dy] = [2.5 * random.whole(-1, 1), 2.5 * random.whole(-1, 1)]
      const old = boxes[k]!
      const moved = boxes.map((b, i) => (i === k ? { ...b, x: b.x + dx, y: b.y + dy } : b))
      const isOn = (p: RoutePort): boolean =>
        p.x >= old.x && p.x <= old.x + old.w && p.y >= old.y && p.y <= old.y + old.h
      const shift = (p: RoutePort): RoutePort => (isOn(p) ? { ...p, x: p.x + dx, y: p.y + dy } : p)
      const after = requests.map((r) => ({ ...r, from: shift(r.from), to: shift(r.to) }))
      const { routes } = routeAll(moved, after, before)
      expect(quality(moved, after, routes)).toMatchObject(CLEAN)
      const near = { x: old.x - 10, y: old.y - 10, w: old.w + 20, h: old.h + 20 }
      const touches = (r: Routed): boolean =>
        r.points.slice(1).some((b, i) => {
          const a = r.points[i]!
          return (
            Math.min(a.x, b.x) <= near.x + near.w &&
            Math.max(a.x, b.x) >= near.x &&
            Math.min(a.y, b.y) <= near.y + near.h &&
            Math.max(a.y, b.y) >= near.y
          )
        })
      routes.forEach((r, i) => {
        if (!touches(before[i]!)) expect(r).toEqual(before[i])
      })
    }
  })

  it('lets a line return when the part that pushed it aside is gone again', () => {
    const request = { id: 'w', from: port(15, 5, 'right'), to: port(85, 5, 'left') }
    const ends = [box('a', 0, 0), box('b', 85, 0)]
    const free = routeAll(ends, [request]).routes
    const around = routeAll([...ends, box('c', 40, 0)], [request], free).routes
    expect(around[0]!.points.length).toBeGreaterThan(2)
    expect(routeAll(ends, [request], free).routes).toEqual(free)
  })
})

describe('one conductor alone', () => {
  it('costs what a plain search over all ways finds, before it is spread', () => {
    for (let seed = 21; seed <= 60; seed++) {
      const { boxes, requests } = randomSheet(seed, 9, 1, 0)
      const sheet = sheetOf(boxes, requests)
      const [line] = sheet.lines
      const way = freeWay(sheet, targetOf(line!.from), targetOf(line!.to))
      const stubs = 2 * 2.5 * PER_MM
      expect(way!.cost + stubs).toBe(cheapestWay(boxes, line!.from.port, line!.to.port))
    }
  })

  it('keeps its corners when it is spread, and grows by no more than 5 mm for each', () => {
    for (let seed = 21; seed <= 40; seed++) {
      const { boxes, requests } = randomSheet(seed, 9, 1, 0)
      const { points } = routeAll(boxes, requests).routes[0]!
      const least = cheapestWay(boxes, requests[0]!.from, requests[0]!.to)
      expect(priceOf(points)).toBeLessThanOrEqual(least + 5 * PER_MM * Math.max(0, points.length - 3))
    }
  })
})

describe('terminals', () => {
  const bar = box('bar', 0, 0, 5, 40)
  const loads = [box('l1', 60, -30), box('l2', 60, 0), box('l3', 60, 30), box('l4', 60, 60)]
  const requests = loads.map((l, i) => ({
    id: `w${i}`,
    from: port(5, 20, 'right'),
    to: port(60, l.y + 2.5, 'left'),
  }))

  it('that are shared: only the stub is common, with a dot where the conductors part', () => {
    const two = routeAll([bar, ...loads], requests.slice(0, 2))
    expect(quality([bar, ...loads], requests.slice(0, 2), two.routes)).toMatchObject(CLEAN)
    expect(two.joins).toEqual([{ x: 7.5, y: 20 }])
    const four = routeAll([bar, ...loads], requests)
    expect(quality([bar, ...loads], requests, four.routes)).toMatchObject(CLEAN)
    expect(four.joins.length).toBe(2)
    for (const j of four.joins) expect(j.y).toBe(20)
  })

  it('that are used once have no dot', () => {
    expect(routeAll([bar, ...loads], requests.slice(0, 1)).joins).toEqual([])
  })

  it('that face each other are joined straight, however near they are', () => {
    for (const gap of [2.5, 3.75, 5, 7.5, 30]) {
      const boxes = [box('a', 0, 0), box('b', 15 + gap, 0)]
      const { routes } = routeAll(boxes, [
        { id: 'w', from: port(15, 5, 'right'), to: port(15 + gap, 5, 'left') },
      ])
      expect(routes[0]).toEqual({
        id: 'w',
        ok: true,
        points: [
          { x: 15, y: 5 },
          { x: 15 + gap, y: 5 },
        ],
      })
    }
  })

  it('that stand beside the lattice still have right angles and their own ends', () => {
    const boxes = [box('a', 0.3, 0.6), box('b', 85, 40)]
    const [from, to] = [port(15.3, 5.6, 'right'), port(92.2, 40, 'up')]
    const { points, ok } = routeAll(boxes, [{ id: 'w', from, to }]).routes[0]!
    expect(ok).toBe(true)
    expect(points[0]).toEqual({ x: 15.3, y: 5.6 })
    expect(points.at(-1)).toEqual({ x: 92.2, y: 40 })
    points.slice(1).forEach((b, k) => {
      expect(Number(b.x !== points[k]!.x) + Number(b.y !== points[k]!.y)).toBe(1)
    })
  })

  it('that are shut in: the conductor is drawn and reported', () => {
    const boxes = [box('a', 0, 0), box('wall', 15, -10, 10, 40), box('b', 60, 0)]
    const { routes, stats } = routeAll(boxes, [
      { id: 'w', from: port(15, 5, 'right'), to: port(60, 5, 'left') },
    ])
    expect(routes[0]!.ok).toBe(false)
    expect(routes[0]!.points[0]).toEqual({ x: 15, y: 5 })
    expect(routes[0]!.points.at(-1)).toEqual({ x: 60, y: 5 })
    expect(stats).toMatchObject({ failed: 1, laid: 0 })
  })

  it('that are crowded: what cannot be laid pushes nobody aside a second time', () => {
    // Grids of parts 2.5 mm apart, where many terminals have no way out.
    for (const seed of [113, 19, 349]) {
      const random = new Random(seed)
      const boxes = Array.from({ length: 12 }, (_, i) =>
        box(`p${i}`, 27.5 * (i % 4), 22.5 * Math.floor(i / 4), 25, 20),
      )
      const end = (): RoutePort => {
        const b = random.pick(boxes)
        return random.chance(0.5)
          ? port(b.x + 25, b.y + 2.5 * random.whole(1, 7), 'right')
          : port(b.x + 2.5 * random.whole(1, 9), b.y, 'up')
      }
      const requests = Array.from({ length: 30 }, (_, i) => ({ id: `w${i}`, from: end(), to: end() }))
      const once = routeAll(boxes, requests)
      expect(once.stats.failed).toBeGreaterThan(0)
      expect(routeAll(boxes, requests, once.routes).routes).toEqual(once.routes)
      const laid = once.routes.flatMap((r, i) => (r.ok ? [{ ...requests[i]!, points: r.points }] : []))
      expect(layoutQuality(boxes, laid)).toMatchObject({ passes: 0, tooNear: 0 })
    }
  })
})

describe('tight places', () => {
  it('many conductors through a gap that just holds them', () => {
    // Five level lines, 1.25 mm apart at the least, fit between two walls that stand 7.5 mm apart.
    const boxes = [
      box('a', 0, 0, 15, 30),
      box('b', 120, 0, 15, 30),
      box('top', 60, -200, 10, 210),
      box('low', 60, 17.5, 10, 200),
    ]
    const requests = [0, 1, 2, 3, 4].map((i) => ({
      id: `w${i}`,
      from: port(15, 2.5 + 5 * i, 'right'),
      to: port(120, 2.5 + 5 * i, 'left'),
    }))
    const { routes } = routeAll(boxes, requests)
    expect(quality(boxes, requests, routes)).toMatchObject(CLEAN)
    expect(routes.every((r) => r.ok)).toBe(true)
    for (const r of routes) expect(Math.max(...r.points.map((p) => p.x))).toBe(120)
  })

  it('a bundle in a wide channel spreads to 5 mm', () => {
    const boxes = [box('a', 0, 0, 15, 30), box('b', 120, 60, 15, 30)]
    const requests = [0, 1, 2, 3].map((i) => ({
      id: `w${i}`,
      from: port(15, 5 + 5 * i, 'right'),
      to: port(120, 65 + 5 * i, 'left'),
    }))
    const { routes, stats } = routeAll(boxes, requests)
    expect(stats.crossings).toBe(0)
    const uprights = routes.map((r) => r.points[1]!.x).sort((p, q) => p - q)
    uprights.slice(1).forEach((x, i) => {
      expect(x - uprights[i]!).toBeGreaterThanOrEqual(5)
    })
  })
})

/** Does one stretch of the way hold both points? */
const holds = ({ points }: Routed, [p, q]: readonly Point[]): boolean =>
  points.slice(1).some((b, k) => {
    const a = points[k]!
    return [p!, q!].every(
      (f) =>
        Math.min(a.x, b.x) <= f.x &&
        f.x <= Math.max(a.x, b.x) &&
        Math.min(a.y, b.y) <= f.y &&
        f.y <= Math.max(a.y, b.y),
    )
  })

describe('corners placed by hand', () => {
  const boxes = [box('a', 0, 0), box('b', 100, 0)]
  const request = { id: 'w', from: port(15, 5, 'right'), to: port(100, 5, 'left') }
  const fixed = [
    { x: 40, y: 40 },
    { x: 70, y: 40 },
  ]

  it('hold their segment', () => {
    const { routes } = routeAll(boxes, [{ ...request, fixed }])
    expect(routes[0]!.ok).toBe(true)
    expect(quality(boxes, [request], routes)).toMatchObject(CLEAN)
    expect(holds(routes[0]!, fixed)).toBe(true)
  })

  it('hold it against others that would like to be there, and when another part moves', () => {
    const other = { id: 'v', from: port(40, 90, 'up'), to: port(40, -40, 'down') }
    const more = [...boxes, box('c', 32.5, 90), box('d', 32.5, -52.5)]
    const first = routeAll(more, [other, { ...request, fixed }])
    expect(holds(first.routes[1]!, fixed)).toBe(true)
    expect(quality(more, [other, request], first.routes)).toMatchObject(CLEAN)
    const moved = more.map((b) => (b.id === 'c' ? { ...b, y: 92.5 } : b))
    const shifted = { ...other, from: port(40, 92.5, 'up') }
    const next = routeAll(moved, [shifted, { ...request, fixed }], first.routes)
    expect(next.routes[1]).toEqual(first.routes[1])
  })

  it('give way to a part that is put on them', () => {
    const more = [...boxes, box('c', 50, 35)]
    const { routes } = routeAll(more, [{ ...request, fixed }])
    expect(routes[0]!.ok).toBe(true)
    expect(quality(more, [request], routes)).toMatchObject(CLEAN)
  })
})
