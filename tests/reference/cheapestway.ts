import type { Point, RouteBox, RoutePort } from '../../engine/sheets/route/request'

/**
 * The price of a right-angle way and, by a plain Dijkstra search with no shortcuts over the 2.5 mm grid, the least price
 * between two ports: 3.2 a millimetre, 36 a corner (the prices that the router states).
 */
const GRID = 2.5
export const PER_MM = 3.2
const PER_CORNER = 36
const STEPS = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
] as const
const SIDES = ['right', 'down', 'left', 'up'] as const

export function priceOf(points: readonly Point[]): number {
  return points.reduce(
    (sum, b, i) => {
      const a = points[i - 1]
      return a ? sum + PER_MM * (Math.abs(a.x - b.x) + Math.abs(a.y - b.y)) : sum
    },
    PER_CORNER * (points.length - 2),
  )
}

export function cheapestWay(boxes: readonly RouteBox[], from: RoutePort, to: RoutePort): number {
  const isWall = (x: number, y: number): boolean =>
    boxes.some((b) => x >= b.x && x <= b.x + b.w && y >= b.y && y <= b.y + b.h)
  const least = { x: Math.min(...boxes.map((b) => b.x)) - 40, y: Math.min(...boxes.map((b) => b.y)) - 40 }
  const most = {
    x: Math.max(...boxes.map((b) => b.x + b.w)) + 40,
    y: Math.max(...boxes.map((b) => b.y + b.h)) + 40,
  }
  const out = SIDES.indexOf(from.side)
  const into = (SIDES.indexOf(to.side) + 2) % 4
  const start = { x: from.x + GRID * STEPS[out]![0], y: from.y + GRID * STEPS[out]![1], d: out }
  const end = { x: to.x - GRID * STEPS[into]![0], y: to.y - GRID * STEPS[into]![1], d: into }
  const key = (s: typeof start): string => `${s.x} ${s.y} ${s.d}`
  // Prices are whole: 8 a step, 36 a corner. Bucket p holds what costs p.
  const known = new Map([[key(start), 0]])
  const buckets: (typeof start)[][] = [[start]]
  for (let price = 0; price < buckets.length; price++)
    for (const s of buckets[price] ?? []) {
      if (known.get(key(s)) !== price) continue
      if (key(s) === key(end)) return price + PER_MM * 2 * GRID
      const isAtEnd = s.x === end.x && s.y === end.y
      STEPS.forEach(([dx, dy], d) => {
        if (d === (s.d + 2) % 4) return
        // A corner right on the end of the stub is one too.
        const length = isAtEnd ? 0 : GRID
        const next = { x: s.x + length * dx, y: s.y + length * dy, d }
        const further = price + PER_MM * length + (d === s.d ? 0 : PER_CORNER)
        if (next.x < least.x || next.x > most.x || next.y < least.y || next.y > most.y) return
        if (isWall(next.x, next.y) || further >= (known.get(key(next)) ?? Number.POSITIVE_INFINITY)) return
        known.set(key(next), further)
        buckets[further] ??= []
        buckets[further].push(next)
      })
    }
  return Number.POSITIVE_INFINITY
}
