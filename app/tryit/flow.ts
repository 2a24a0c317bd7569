import type { OperatingPoint, XY } from '../../engine'
import { weightOf } from '../lenses/current'
import { ASIDE, type Look } from '../lenses/look'

/** Currents smaller than this, A, are shown as none. */
const NONE_A = 0.005

/** What a line shows in use: its weight, and which way the current runs along it. */
export interface Flow {
  readonly look: Look
  /** A, always ≥ 0. */
  readonly amps: number
  /** Along the line from its first point to its last, or against it. */
  readonly forward: boolean
  /** Quicker dashes for greater currents. */
  readonly pace: 'slow' | 'brisk' | 'quick'
}

/** A line may stand for a feed and its return: then the feed counts, else the return the other way round. */
export function flowOf(point: OperatingPoint, id: string, withReturn: string | null): Flow {
  const own = point.conductors.get(id) ?? 0
  const back = withReturn === null ? 0 : -(point.conductors.get(withReturn) ?? 0)
  const amps = Math.abs(own) >= NONE_A ? own : back
  const size = Math.abs(amps)
  return {
    look: size < NONE_A ? ASIDE : weightOf(size),
    amps: size < NONE_A ? 0 : size,
    forward: amps >= 0,
    pace: size < 5 ? 'slow' : size < 50 ? 'brisk' : 'quick',
  }
}

/** Length of an arrow, and how far it stands out on either side of its line, mm. */
const ARROW = { long: 2.8, out: 0.9 }
const EVERY_MM = 25

/** Arrow heads along a line, for those who want nothing to move: one in each stretch with room, more on long ones. */
export function arrowsOn(points: readonly XY[], forward: boolean, widthMm: number): string {
  const half = widthMm / 2 + ARROW.out
  const heads = points.slice(1).flatMap((b, i) => {
    const a = points[i]!
    const length = Math.hypot(b[0] - a[0], b[1] - a[1])
    if (length < 2 * ARROW.long) return []
    const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length]
    const s = forward ? 1 : -1
    const count = Math.max(1, Math.floor(length / EVERY_MM))
    return Array.from({ length: count }, (_, k) => {
      const at = (length * (k + 0.5)) / count
      const [x, y] = [a[0] + ux * at, a[1] + uy * at]
      const tip = [x + s * ux * ARROW.long * 0.5, y + s * uy * ARROW.long * 0.5]
      const tail = [x - s * ux * ARROW.long * 0.5, y - s * uy * ARROW.long * 0.5]
      const [nx, ny] = [-uy * half, ux * half]
      return `M${r(tip[0]!)} ${r(tip[1]!)}L${r(tail[0]! + nx)} ${r(tail[1]! + ny)}L${r(tail[0]! - nx)} ${r(tail[1]! - ny)}Z`
    })
  })
  return heads.join('')
}

const r = (n: number): number => Math.round(n * 1000) / 1000
