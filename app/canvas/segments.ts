import { snap, type XY } from '../../engine'

/** Moving one straight stretch of a conductor by hand. Pure; millimetres. */

/** A stretch at a terminal keeps this much of its way out. */
const STUB_MM = 5
/** Shorter stretches at a terminal have nothing to move, mm. */
const LEAST_MM = 7.5

export interface Pulled {
  /** The whole line with the stretch moved. */
  readonly points: readonly XY[]
  /** The corners that are held from now on, in the order of the line. */
  readonly held: readonly XY[]
}

/** Index of the stretch nearest to a place. */
export function stretchAt(points: readonly XY[], [x, y]: XY): number {
  let [best, least] = [0, Infinity]
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!]
    const far = Math.hypot(beyond(x, a[0], b[0]), beyond(y, a[1], b[1]))
    if (far < least) [best, least] = [i - 1, far]
  }
  return best
}

const beyond = (v: number, a: number, b: number): number =>
  Math.max(0, Math.min(a, b) - v, v - Math.max(a, b))

/**
 * The line with stretch `k` moved across itself by the part of `by` that runs across, on the grid. `before`: corners
 * that were held already; they stay held. null: the stretch is too short to move, or it did not.
 */
export function pull(points: readonly XY[], k: number, by: XY, before: readonly XY[]): Pulled | null {
  const last = points.length - 2
  const [a, b] = [points[k], points[k + 1]]
  if (!a || !b) return null
  const upright = a[0] === b[0]
  const place = upright ? a[0] : a[1]
  const off = snap(place + (upright ? by[0] : by[1])) - place
  if (off === 0) return null
  const length = Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1])
  const atEnds = (k === 0 ? 1 : 0) + (k === last ? 1 : 0)
  if (length < atEnds * LEAST_MM) return null
  const stub = (from: XY, to: XY): XY => {
    const part = STUB_MM / length
    return [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part]
  }
  const shifted = ([x, y]: XY): XY => (upright ? [x + off, y] : [x, y + off])
  const near = k === 0 ? stub(a, b) : a
  const far = k === last ? stub(b, a) : b
  const moved = [shifted(near), shifted(far)]
  const line = [
    ...points.slice(0, k + (k === 0 ? 1 : 0)),
    ...(k === 0 ? [near] : []),
    ...moved,
    ...(k === last ? [far] : []),
    ...points.slice(k + (k === last ? 1 : 2)),
  ]
  return { points: line, held: heldIn(line, [...moved, ...before]) }
}

/** Corners from the first to the last that is to be held; those between keep the line what it is. */
function heldIn(line: readonly XY[], corners: readonly XY[]): XY[] {
  const at = line.flatMap((p, i) =>
    i > 0 && i < line.length - 1 && corners.some((c) => same(c, p)) ? [i] : [],
  )
  return line.slice(at[0] ?? 0, (at.at(-1) ?? -1) + 1).filter((p, i, all) => i === 0 || !same(p, all[i - 1]!))
}

/** Does a line pass every held corner? */
export const isHeld = (points: readonly XY[], held: readonly XY[]): boolean =>
  held.every(([x, y]) =>
    points.some((b, i) => {
      const a = points[i - 1]
      return a !== undefined && Math.hypot(beyond(x, a[0], b[0]), beyond(y, a[1], b[1])) < 1e-6
    }),
  )

const same = (a: XY, b: XY): boolean => Math.abs(a[0] - b[0]) < 1e-6 && Math.abs(a[1] - b[1]) < 1e-6

/** The middles of the stretches that are long enough to take hold of, and whether they stand upright. */
export function gripsOf(points: readonly XY[]): readonly { readonly at: XY; readonly upright: boolean }[] {
  return points.slice(1).flatMap((b, i) => {
    const a = points[i]!
    const length = Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1])
    const ends = (i === 0 ? 1 : 0) + (i === points.length - 2 ? 1 : 0)
    if (length < Math.max(5, ends * LEAST_MM)) return []
    return [{ at: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const, upright: a[0] === b[0] }]
  })
}
