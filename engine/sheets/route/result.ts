import { CORNER, LEVEL, UPRIGHT, xOf, yOf } from './lattice'
import type { Crossing, Point, Routed, RoutePort, RouteResult } from './request'
import type { Line, Sheet } from './sheet'
import { everyStep } from './way'

/** Ways in millimetres with what is counted and drawn on them. */
export function resultOf(s: Sheet, kept: number): RouteResult {
  const routes = s.lines.map((line) => drawn(s, line))
  const crossings = crossingsOf(s)
  const bends = routes.reduce((sum, r) => sum + Math.max(0, r.points.length - 2), 0)
  const length = routes.reduce((sum, r) => sum + lengthOf(r.points), 0)
  const failed = routes.filter((r) => !r.ok).length
  return {
    routes,
    crossings,
    joins: joinsOf(s, routes),
    stats: { kept, laid: routes.length - kept - failed, failed, crossings: crossings.length, bends, length },
  }
}

function drawn(s: Sheet, line: Line): Routed {
  const { id, from, to } = line.request
  const inner = line.corners.map((n) => ({ x: xOf(s.lattice, n), y: yOf(s.lattice, n) }))
  if (inner.length > 0)
    return {
      id,
      points: simplified([from, beside(from, inner[0]!), ...inner, beside(to, inner.at(-1)!), to]),
      ok: true,
    }
  const direct = isFacing(line)
  const level = line.from.axis === 0
  const corner = level ? { x: to.x, y: from.y } : { x: from.x, y: to.y }
  return { id, points: simplified([from, corner, to]), ok: direct }
}

/** Where the line straight out of a port, which may stand beside the lattice, is level with a point of its stub. */
function beside(port: RoutePort, { x, y }: Point): Point {
  return port.side === 'left' || port.side === 'right' ? { x, y: port.y } : { x: port.x, y }
}

/** Terminals so near to each other, face to face, that their stubs are the whole way. */
function isFacing({ from, to }: Line): boolean {
  const gap = (to.node - from.node) / from.out
  return from.axis === to.axis && from.out === -to.out && Number.isInteger(gap) && gap >= 0 && gap <= 3
}

/** Without repeated points and points on a straight stretch. */
function simplified(points: readonly Point[]): Point[] {
  const kept: Point[] = []
  for (const { x, y } of points) {
    const a = kept.at(-2)
    const b = kept.at(-1)
    if (b && b.x === x && b.y === y) continue
    if (a && b && ((a.x === b.x && b.x === x) || (a.y === b.y && b.y === y))) kept.pop()
    kept.push({ x, y })
  }
  if (kept.length === 1) kept.push(kept[0]!)
  return kept
}

const lengthOf = (points: readonly Point[]): number =>
  points.reduce(
    (sum, p, k) => sum + (k === 0 ? 0 : Math.abs(p.x - points[k - 1]!.x) + Math.abs(p.y - points[k - 1]!.y)),
    0,
  )

function crossingsOf(s: Sheet): Crossing[] {
  const l = s.lattice
  const found: Crossing[] = []
  for (const line of s.lines)
    everyStep(l, line.corners, (node, axis) => {
      const isCrossing = (l.bits[node]! & (LEVEL | UPRIGHT | CORNER)) === (LEVEL | UPRIGHT)
      if (axis === 0 && isCrossing)
        found.push({
          x: xOf(l, node),
          y: yOf(l, node),
          level: line.request.id,
          upright: s.lines[l.owner[1][node]!]!.request.id,
        })
      return true
    })
  return found
}

/** Exits where the conductors of one terminal go three ways or more. */
function joinsOf(s: Sheet, routes: readonly Routed[]): Point[] {
  const arms = new Map<string, { at: Point; ways: Set<string> }>()
  const meet = (exits: readonly number[], points: readonly Point[]): void => {
    for (const n of exits) {
      const at = { x: xOf(s.lattice, n), y: yOf(s.lattice, n) }
      for (let k = 1; k < points.length; k++) {
        const [a, b] = [points[k - 1]!, points[k]!]
        if (!isOn(at, a, b)) continue
        const key = `${at.x} ${at.y}`
        const here = arms.get(key) ?? { at, ways: new Set<string>() }
        arms.set(key, here)
        for (const end of [a, b])
          if (end.x !== at.x || end.y !== at.y)
            here.ways.add(`${Math.sign(end.x - at.x)} ${Math.sign(end.y - at.y)}`)
      }
    }
  }
  s.lines.forEach((line, i) => {
    if (!routes[i]!.ok) return
    meet(line.from.exits, routes[i]!.points)
    meet(line.to.exits, routes[i]!.points)
  })
  return [...arms.values()].filter((a) => a.ways.size > 2).map((a) => a.at)
}

const isOn = (p: Point, a: Point, b: Point): boolean =>
  (a.x === b.x && p.x === a.x && Math.min(a.y, b.y) <= p.y && p.y <= Math.max(a.y, b.y)) ||
  (a.y === b.y && p.y === a.y && Math.min(a.x, b.x) <= p.x && p.x <= Math.max(a.x, b.x))
