import type { Point, RouteBox, RoutePort } from '../../engine/sheets/route/request'

/** How good a drawing is, measured from its geometry alone, by comparing everything with everything. */
export interface LayoutQuality {
  /** Stretches where two conductors lie on each other, beyond the stub that conductors of one terminal share. */
  readonly overlaps: number
  /** Stretches nearer than the least distance to another that runs alongside. */
  readonly tooNear: number
  /** Segments that run through a part, or nearer to one than the least distance outside their own stubs. */
  readonly passes: number
  /** Corners that touch another conductor: it would read as a join. */
  readonly touches: number
  readonly crossings: number
  readonly bends: number
  readonly lengthMm: number
  /** Labels that lie on a part, a conductor or another label. */
  readonly labelCollisions: number
}

export interface DrawnWay {
  readonly id: string
  readonly from: RoutePort
  readonly to: RoutePort
  readonly points: readonly Point[]
}

export interface DrawnLabel {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

interface Segment {
  readonly way: DrawnWay
  readonly index: number
  readonly x1: number
  readonly y1: number
  readonly x2: number
  readonly y2: number
  readonly isLevel: boolean
}

const LEAST = 1.25
const EPS = 1e-6

export function layoutQuality(
  boxes: readonly RouteBox[],
  ways: readonly DrawnWay[],
  labels: readonly DrawnLabel[] = [],
): LayoutQuality {
  const segments = ways.flatMap(segmentsOf)
  const stubs = new Map<string, number>()
  for (const p of ways.flatMap((w) => [w.from, w.to])) stubs.set(portKey(p), (stubs.get(portKey(p)) ?? 0) + 1)
  const isShared = (a: Segment, b: Segment): boolean => isSharedStub(a, b, stubs)
  let [overlaps, tooNear, touches, crossings] = [0, 0, 0, 0]
  segments.forEach((a, i) => {
    for (const b of segments.slice(i + 1)) {
      if (a.way === b.way) continue
      if (a.isLevel === b.isLevel) {
        const [common, gap] = beside(a, b)
        if (common > EPS && gap < EPS && !isShared(a, b)) overlaps++
        else if (common > EPS && gap > EPS && gap < LEAST - EPS) tooNear++
        else if (Math.abs(common) <= EPS && gap < EPS && !isShared(a, b)) touches++
      } else {
        const [level, upright] = a.isLevel ? [a, b] : [b, a]
        const meets = isIn(upright.x1, level.x1, level.x2, EPS) && isIn(level.y1, upright.y1, upright.y2, EPS)
        const crosses =
          isIn(upright.x1, level.x1, level.x2, -EPS) && isIn(level.y1, upright.y1, upright.y2, -EPS)
        if (crosses) crossings++
        else if (meets && !isShared(a, b)) touches++
      }
    }
  })
  return {
    overlaps,
    tooNear,
    touches,
    crossings,
    passes: segments.filter((s) => boxes.some((b) => isPass(s, b))).length,
    bends: ways.reduce((n, w) => n + Math.max(0, w.points.length - 2), 0),
    lengthMm: segments.reduce((sum, s) => sum + s.x2 - s.x1 + s.y2 - s.y1, 0),
    labelCollisions: labels.filter((a, i) => collides(a, i, labels, boxes, segments)).length,
  }
}

export function segmentsOf(way: DrawnWay): Segment[] {
  return way.points.slice(1).map((b, k) => {
    const a = way.points[k]!
    return {
      way,
      index: k,
      x1: Math.min(a.x, b.x),
      y1: Math.min(a.y, b.y),
      x2: Math.max(a.x, b.x),
      y2: Math.max(a.y, b.y),
      isLevel: a.y === b.y,
    }
  })
}

/** Common stretch of two parallel segments (0: end to end, below 0: apart), and the distance of their lines. */
function beside(a: Segment, b: Segment): [common: number, gap: number] {
  return a.isLevel
    ? [Math.min(a.x2, b.x2) - Math.max(a.x1, b.x1), Math.abs(a.y1 - b.y1)]
    : [Math.min(a.y2, b.y2) - Math.max(a.y1, b.y1), Math.abs(a.x1 - b.x1)]
}

const isIn = (v: number, a: number, b: number, slack: number): boolean => v > a - slack && v < b + slack

const portKey = (p: RoutePort): string => `${p.x} ${p.y} ${p.side}`

/** A stub serves three conductors; each further 2.5 mm of it two more. */
const stubLength = (conductors: number): number => 2.5 + 2.5 * Math.max(0, Math.ceil((conductors - 3) / 2))

/** Do the two meet only on the stub that leads straight out of a terminal that both end at? */
function isSharedStub(a: Segment, b: Segment, conductors: ReadonlyMap<string, number>): boolean {
  const [x1, x2] = [Math.max(a.x1, b.x1), Math.min(a.x2, b.x2)]
  const [y1, y2] = [Math.max(a.y1, b.y1), Math.min(a.y2, b.y2)]
  return [a.way.from, a.way.to].some((p) =>
    [b.way.from, b.way.to].some((q) => {
      if (portKey(p) !== portKey(q)) return false
      const reach = Math.max(Math.abs(x1 - p.x), Math.abs(x2 - p.x), Math.abs(y1 - p.y), Math.abs(y2 - p.y))
      const isLevel = p.side === 'left' || p.side === 'right'
      const isInLine = isLevel ? y1 === p.y && y2 === p.y : x1 === p.x && x2 === p.x
      return isInLine && reach <= stubLength(conductors.get(portKey(p))!) + EPS
    }),
  )
}

function isPass(s: Segment, b: RouteBox): boolean {
  const [x1, x2, y1, y2] = [s.x1, s.x2, s.y1, s.y2]
  const gapX = Math.max(b.x - x2, x1 - (b.x + b.w))
  const gapY = Math.max(b.y - y2, y1 - (b.y + b.h))
  if (Math.max(gapX, gapY) > LEAST - EPS) return false
  const ends = [
    ...(s.index === 0 ? [s.way.from] : []),
    ...(s.index === s.way.points.length - 2 ? [s.way.to] : []),
  ]
  const isOwnStub = ends.some((p) => isIn(p.x, b.x, b.x + b.w, EPS) && isIn(p.y, b.y, b.y + b.h, EPS))
  return !(isOwnStub && Math.max(gapX, gapY) > -EPS)
}

function collides(
  a: DrawnLabel,
  i: number,
  labels: readonly DrawnLabel[],
  boxes: readonly RouteBox[],
  segments: readonly Segment[],
): boolean {
  const hits = (x1: number, y1: number, x2: number, y2: number): boolean =>
    x1 < a.x + a.w - EPS && x2 > a.x + EPS && y1 < a.y + a.h - EPS && y2 > a.y + EPS
  return (
    labels.some((b, k) => k < i && hits(b.x, b.y, b.x + b.w, b.y + b.h)) ||
    boxes.some((b) => hits(b.x, b.y, b.x + b.w, b.y + b.h)) ||
    segments.some((s) => hits(s.x1, s.y1, s.x2, s.y2))
  )
}
