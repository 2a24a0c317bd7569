import type { Part, PartId, SceneConductor, Side, XY } from '../../engine'

/**
 * While a part is under the hand, or the newest layout is not there yet, its conductors follow as plain
 * right-angle lines. These functions are pure; the layer calls them for each conductor that is touched.
 */

export interface End {
  readonly part: Part
  /** Where the part is at this moment, mm. */
  readonly at: XY
  /** Terminal on the sheet, mm, and the side it leaves from. */
  readonly terminal: XY
  readonly side: Side
}

/** The way to draw a conductor now. `exact`: it is the laid-out way, unmoved, so its labels still fit. */
export function wayOf(
  laid: SceneConductor | undefined,
  from: End,
  to: End,
  before: (id: PartId) => Part | undefined,
): { readonly points: readonly XY[]; readonly exact: boolean } {
  const a = laid && shift(from, before)
  const b = laid && shift(to, before)
  if (!laid || !a || !b || laid.points.length < 2)
    return { points: elbow(from.terminal, from.side, to.terminal, to.side), exact: false }
  if (a[0] === b[0] && a[1] === b[1])
    return still(a)
      ? { points: laid.points, exact: true }
      : { points: laid.points.map((p) => add(p, a)), exact: false }
  const first = add(laid.points[0]!, a)
  const last = add(laid.points.at(-1)!, b)
  const points =
    (still(a) && stretched(laid.points, b)) ||
    (still(b) && stretched([...laid.points].reverse(), a)?.reverse()) ||
    elbow(first, from.side, last, to.side)
  return { points, exact: false }
}

/**
 * The laid-out way with its last point moved: its last stretches give, the others stand. null: it would turn back
 * on itself at a terminal.
 */
export function stretched(points: readonly XY[], by: XY): XY[] | null {
  const n = points.length - 1
  const [a, b] = [points[n - 1], points[n]]
  if (n < 2 || !a || !b) return null
  const along = a[0] === b[0] ? 1 : 0
  const across: XY = along === 0 ? [0, by[1]] : [by[0], 0]
  const lengthwise: XY = along === 0 ? [by[0], 0] : [0, by[1]]
  const last = tidy([...points.slice(0, n - 1), add(a, across), add(b, by)])
  if (leavesAlike(points, last)) return last
  if (n < 3) return null
  const both = tidy([...points.slice(0, n - 2), add(points[n - 2]!, lengthwise), add(a, by), add(b, by)])
  return leavesAlike(points, both) ? both : null
}

/** Does a way still leave both its ends in the same direction, by a stub at least? */
const leavesAlike = (before: readonly XY[], now: readonly XY[]): boolean =>
  [0, -1].every((end) => {
    const [a, b] = end === 0 ? [before[0]!, before[1]!] : [before.at(-1)!, before.at(-2)!]
    const [c, d] = end === 0 ? [now[0], now[1]] : [now.at(-1), now.at(-2)]
    if (!c || !d) return false
    const least = Math.min(STUB_MM, Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1]))
    const isLevel = a[1] === b[1]
    const [was, is] = isLevel ? [b[0] - a[0], d[0] - c[0]] : [b[1] - a[1], d[1] - c[1]]
    return (isLevel ? c[1] === d[1] : c[0] === d[0]) && is * Math.sign(was) >= least - 1e-6
  })

/** How far a part has moved since it was laid out; null: it was turned, changed or not there. */
function shift(end: End, before: (id: PartId) => Part | undefined): XY | null {
  const old = before(end.part.id)
  if (!old) return null
  const { part, at } = end
  const same =
    old === part ||
    (old.turn === part.turn &&
      old.mirrored === part.mirrored &&
      old.kind === part.kind &&
      old.values === part.values)
  return same ? [at[0] - old.x, at[1] - old.y] : null
}

const still = ([x, y]: XY) => Math.abs(x) < 1e-6 && Math.abs(y) < 1e-6
const add = ([x, y]: XY, [dx, dy]: XY): XY => [x + dx, y + dy]

const OUT: Readonly<Record<Side, XY>> = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] }
const STUB_MM = 5

/** A right-angle line between two terminals: out by a stub at each end, one step across between them. */
export function elbow(from: XY, fromSide: Side, to: XY, toSide: Side): XY[] {
  const a = out(from, fromSide)
  const b = out(to, toSide)
  const across = fromSide === 'left' || fromSide === 'right'
  const acrossAtEnd = toSide === 'left' || toSide === 'right'
  if (across && acrossAtEnd) {
    const x = (a[0] + b[0]) / 2
    return tidy([from, a, [x, a[1]], [x, b[1]], b, to])
  }
  if (!across && !acrossAtEnd) {
    const y = (a[1] + b[1]) / 2
    return tidy([from, a, [a[0], y], [b[0], y], b, to])
  }
  return tidy([from, a, across ? [b[0], a[1]] : [a[0], b[1]], b, to])
}

const out = ([x, y]: XY, side: Side): XY => [x + OUT[side][0] * STUB_MM, y + OUT[side][1] * STUB_MM]

/** Drops points that repeat or lie on the line between their neighbours. */
function tidy(points: readonly XY[]): XY[] {
  const kept: XY[] = []
  for (const p of points) {
    const last = kept.at(-1)
    if (last && last[0] === p[0] && last[1] === p[1]) continue
    const prev = kept.at(-2)
    if (prev && last && onLine(prev, last, p)) kept.pop()
    kept.push(p)
  }
  return kept
}

const onLine = (a: XY, b: XY, c: XY) =>
  (a[0] === b[0] && b[0] === c[0] && (b[1] - a[1]) * (c[1] - b[1]) >= 0) ||
  (a[1] === b[1] && b[1] === c[1] && (b[0] - a[0]) * (c[0] - b[0]) >= 0)
