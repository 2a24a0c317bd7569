import { arc, outline } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { LEAST, textMark, USUAL } from '../block'
import { widthOf } from '../measure'
import type { Area } from '../paper'

/** How a cloud stands round what it marks, and how long one of its scallops is about. */
export const CLOUD = { clear: 1.5, scallop: 4, bulge: 1 } as const

/**
 * Scallops round an area, bulging outwards, as drawing practice marks what a revision changed (common practice, no
 * source). Drawn with a line, so that it needs no colour.
 */
export function cloudMarks({ x, y, w, h }: Area): Mark[] {
  const { clear, scallop, bulge } = CLOUD
  const [left, top, right, bottom] = [x - clear, y - clear, x + w + clear, y + h + clear]
  const side = (from: readonly [number, number], to: readonly [number, number], turn: number): Mark[] => {
    const [dx, dy] = [to[0] - from[0], to[1] - from[1]]
    const length = Math.hypot(dx, dy)
    const count = Math.max(1, Math.round(length / scallop))
    const half = length / count / 2
    // A bow of a height over a chord: its centre lies on the inner side.
    const rise = Math.min(bulge, half)
    const r = (half * half + rise * rise) / (2 * rise)
    const inward = r - rise
    const [ux, uy] = [dx / length, dy / length]
    const open = (Math.asin(Math.min(1, inward / r)) * 180) / Math.PI
    return Array.from({ length: count }, (_, i) => {
      const at = (2 * i + 1) * half
      const [cx, cy] = [from[0] + ux * at - uy * inward, from[1] + uy * at + ux * inward]
      return { ...arc(cx, cy, r, turn + 180 + open, turn + 360 - open), ink: 'accent' as const }
    })
  }
  return [
    ...side([left, top], [right, top], 0),
    ...side([right, top], [right, bottom], 90),
    ...side([right, bottom], [left, bottom], 180),
    ...side([left, bottom], [left, top], 270),
  ]
}

/** Width and height of the triangle with the letter of a revision. */
export const TRIANGLE = { w: 6.5, h: 5.6 } as const

/** The triangle of a revision, from the top left corner of its box. */
export function revisionTriangle(x: Millimetres, y: Millimetres, letter: string): Mark[] {
  const { w, h } = TRIANGLE
  const height = widthOf(letter, USUAL, 'bold') <= w * 0.42 ? USUAL : LEAST
  return [
    outline([x + w / 2, y, x + w, y + h, x, y + h], { pen: 'line', ink: 'accent', fill: 'paper' }),
    textMark(
      x + w / 2,
      y + h - 0.8,
      { text: letter, height, weight: 'bold', ink: 'accent' },
      { anchor: 'middle' },
    ),
  ]
}
