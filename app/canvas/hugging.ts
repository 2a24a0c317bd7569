import type { SceneConductor, SceneLabel, ScenePart, XY } from '../../engine'

type Placed = Pick<SceneLabel, 'x' | 'y' | 'w' | 'h' | 'turn'>

/** The edge of a label, in its own upright frame, that is nearer to the part it names. */
export function edgeToPart(label: Placed, part: Pick<ScenePart, 'y' | 'h'>): 'top' | 'bottom' {
  return label.y + label.h / 2 < part.y + part.h / 2 ? 'bottom' : 'top'
}

/** The edge of a label, in its own frame, that is nearer to the line it names. */
export function edgeToLine(label: Placed, { points }: Pick<SceneConductor, 'points'>): 'top' | 'bottom' {
  const { x, y, w, h, turn } = label
  const top: XY = turn === 0 ? [x + w / 2, y] : [x, y - w / 2]
  const bottom: XY = turn === 0 ? [x + w / 2, y + h] : [x + h, y - w / 2]
  return distance(top, points) < distance(bottom, points) ? 'top' : 'bottom'
}

/** Words of a conductor farther from its line than this, mm, stand with the part at its end instead. */
const BESIDE = 3

/** Do words stand apart from the line that they speak of, with no leader to it? Cut short they would seem to name the part. */
export function standsApart(label: SceneLabel, { points }: Pick<SceneConductor, 'points'>): boolean {
  if (label.leader) return false
  const { x, y, w, h, turn } = label
  const [left, top, right, bottom] = turn === 0 ? [x, y, x + w, y + h] : [x, y - w, x + h, y]
  return points.slice(1).every((b, i) => {
    const a = points[i]!
    const dx = Math.max(0, Math.min(a[0], b[0]) - right, left - Math.max(a[0], b[0]))
    const dy = Math.max(0, Math.min(a[1], b[1]) - bottom, top - Math.max(a[1], b[1]))
    return Math.hypot(dx, dy) > BESIDE
  })
}

/** Where along an upright label its leader meets it, 0 left to 1 right; null where it has none. */
export function leaderAlong({ x, y, w, h, turn, leader }: SceneLabel): number | null {
  if (!leader || turn !== 0 || w <= 0) return null
  const off = ([px, py]: XY): number => outside(px, x, x + w) + outside(py, y, y + h)
  const [a, b] = leader
  const at = off(a) <= off(b) ? a : b
  return Math.min(1, Math.max(0, (at[0] - x) / w))
}

/** From a point to a line of level and upright stretches, mm. */
function distance([x, y]: XY, points: readonly XY[]): number {
  let least = Infinity
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!]
    const dx = outside(x, a[0], b[0])
    const dy = outside(y, a[1], b[1])
    least = Math.min(least, Math.hypot(dx, dy))
  }
  return least
}

const outside = (v: number, a: number, b: number): number =>
  Math.max(0, Math.min(a, b) - v, v - Math.max(a, b))
