import { circle, outline } from '../kinds/draw'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'

/** Height of an equilateral triangle as a part of its side. */
const HEIGHT = Math.sqrt(3) / 2

/** The bolt, as parts of width and height of the triangle: down to a hook, back, and to its point. */
const BOLT = [
  [0.56, 0.3],
  [0.4, 0.62],
  [0.51, 0.59],
  [0.46, 0.77],
  [0.42, 0.75],
  [0.45, 0.91],
  [0.57, 0.8],
  [0.52, 0.79],
  [0.62, 0.5],
  [0.51, 0.53],
  [0.61, 0.3],
] as const

/** Warning of electricity: a triangle with a bolt in it, drawn after the description of ISO 7010 W012; `w` wide. */
export function warningSign(x: Millimetres, y: Millimetres, w: Millimetres): Mark[] {
  const h = w * HEIGHT
  return [
    outline([x + w / 2, y, x + w, y + h, x, y + h], { pen: 'strong', fill: 'paper' }),
    outline(
      BOLT.flatMap(([px, py]) => [x + px * w, y + py * h]),
      { pen: 'thin', fill: 'ink' },
    ),
  ]
}

/** General warning: a triangle with an exclamation mark in it, drawn after the description of ISO 7010 W001; `w` wide. */
export function generalSign(x: Millimetres, y: Millimetres, w: Millimetres): Mark[] {
  const h = w * HEIGHT
  const [middle, top, foot] = [x + w / 2, y + h * 0.32, y + h * 0.7]
  return [
    outline([middle, y, x + w, y + h, x, y + h], { pen: 'strong', fill: 'paper' }),
    outline(
      [middle - w * 0.05, top, middle + w * 0.05, top, middle + w * 0.025, foot, middle - w * 0.025, foot],
      { pen: 'thin', fill: 'ink' },
    ),
    circle(middle, y + h * 0.82, w * 0.05, { pen: 'thin', fill: 'ink' }),
  ]
}

export const signHeight = (w: Millimetres): Millimetres => w * HEIGHT
