import type { Scene, XY } from '../../../engine'

/** What part of a drawing is in sight, mm. */
export interface Frame {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

const MARGIN = 8
const [CLOSEST, WIDEST] = [25, 4000]

/** Round both drawings. */
export function frameOf(scenes: readonly Scene[]): Frame {
  const boxes = scenes.map((s) => s.box).filter((b) => b.w > 0 && b.h > 0)
  if (boxes.length === 0) return { x: 0, y: 0, w: 100, h: 70 }
  return around(
    boxes.flatMap(({ x, y, w, h }): XY[] => [
      [x, y],
      [x + w, y + h],
    ]),
    MARGIN,
  )
}

export function around(points: readonly XY[], margin: number): Frame {
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])]
  const [x, y] = [Math.min(...xs) - margin, Math.min(...ys) - margin]
  return { x, y, w: Math.max(...xs) + margin - x, h: Math.max(...ys) + margin - y }
}

/** Nearer (by under 1) or further away, about a point that stays where it is. */
export function zoomed(frame: Frame, by: number, [px, py]: XY = middleOf(frame)): Frame {
  const wanted = frame.w * by
  const k = Math.min(WIDEST, Math.max(CLOSEST, wanted)) / frame.w
  return { x: px - (px - frame.x) * k, y: py - (py - frame.y) * k, w: frame.w * k, h: frame.h * k }
}

export const shifted = (frame: Frame, dx: number, dy: number): Frame => ({
  ...frame,
  x: frame.x + dx,
  y: frame.y + dy,
})

export const middleOf = ({ x, y, w, h }: Frame): XY => [x + w / 2, y + h / 2]
