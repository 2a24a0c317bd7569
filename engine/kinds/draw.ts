import type { ArcMark, CircleMark, Ink, LineMark, Pen, TextMark, XY } from '../model/marks'
import type { Millimetres } from '../units'

/** Makers of marks, short enough that a symbol reads as its drawing. Millimetres in the box of the symbol. */

/** Lettering inside symbols, mm: the smallest height of ISO 3098 that stays legible on paper. */
export const LETTER: Millimetres = 1.8

type LineMore = Partial<Pick<LineMark, 'pen' | 'ink' | 'fill' | 'dash' | 'closed'>>

/** A run of straight strokes: `line([0, 0, 5, 0, 5, 5])`. */
export function line(xy: readonly number[], more: LineMore = {}): LineMark {
  const points: XY[] = []
  for (let i = 0; i + 1 < xy.length; i += 2) points.push([xy[i]!, xy[i + 1]!])
  return { is: 'line', points, pen: 'line', ...more }
}

/** A stroke that moves with a contact: where it lies at rest, and worked. */
export const moving = (rest: LineMark, worked: LineMark): LineMark => ({ ...rest, worked: worked.points })

/** A closed outline through the points. */
export const outline = (xy: readonly number[], more: LineMore = {}): LineMark =>
  line(xy, { closed: true, ...more })

export const rect = (
  x: Millimetres,
  y: Millimetres,
  w: Millimetres,
  h: Millimetres,
  more: LineMore = {},
): LineMark => outline([x, y, x + w, y, x + w, y + h, x, y + h], more)

export const circle = (
  x: Millimetres,
  y: Millimetres,
  r: Millimetres,
  more: Partial<Pick<CircleMark, 'pen' | 'ink' | 'fill'>> = {},
): CircleMark => ({ is: 'circle', at: [x, y], r, pen: 'line', ...more })

/** Degrees clockwise from the x axis. */
export const arc = (
  x: Millimetres,
  y: Millimetres,
  r: Millimetres,
  from: number,
  to: number,
  pen: Pen = 'line',
): ArcMark => ({ is: 'arc', at: [x, y], r, from, to, pen })

/** A filled joint where lines meet. */
export const dot = (x: Millimetres, y: Millimetres): CircleMark =>
  circle(x, y, 0.5, { fill: 'ink', pen: 'thin' })

/** A straight stroke with a filled head at its far end. */
export function arrow(
  fromX: Millimetres,
  fromY: Millimetres,
  x: Millimetres,
  y: Millimetres,
  pen: Pen = 'line',
): readonly LineMark[] {
  const long = Math.hypot(x - fromX, y - fromY)
  const [ux, uy] = [(x - fromX) / long, (y - fromY) / long]
  const [bx, by] = [x - HEAD * ux, y - HEAD * uy]
  const half = HEAD / 3
  return [
    line([fromX, fromY, bx, by], { pen }),
    outline([x, y, bx - half * uy, by + half * ux, bx + half * uy, by - half * ux], {
      pen: 'thin',
      fill: 'ink',
    }),
  ]
}

/** Length of an arrow head, mm. */
const HEAD: Millimetres = 1.5

interface TextMore {
  readonly anchor?: NonNullable<TextMark['anchor']>
  readonly weight?: NonNullable<TextMark['weight']>
  readonly ink?: Ink
  readonly height?: Millimetres
}

/** Text on a baseline. */
export const text = (x: Millimetres, y: Millimetres, words: string, more: TextMore = {}): TextMark => ({
  is: 'text',
  at: [x, y],
  text: words,
  height: LETTER,
  ...more,
})

/** Text centred on a point. */
export const letter = (x: Millimetres, y: Millimetres, words: string, height = LETTER): TextMark =>
  text(x, y + height / 2, words, { anchor: 'middle', height })

/** Advances of characters as parts of the height of a capital, on the wide side for a text typeface. */
const ADVANCES: readonly (readonly [RegExp, number])[] = [
  [/[ .,:;'|!ijl]/, 0.42],
  [/[-Irtf()/]/, 0.58],
  [/[mwMW%…]/, 1.35],
  [/[A-Z]/, 0.96],
]
const OTHER_ADVANCE = 0.86

const advance = (c: string): number => ADVANCES.find(([some]) => some.test(c))?.[1] ?? OTHER_ADVANCE

/** Width that a text takes, estimated on the wide side. */
export function textWidth(words: string, height: Millimetres = LETTER): Millimetres {
  let width = 0
  for (const c of words) width += advance(c)
  return width * height
}

/** Text cut to a width, with an ellipsis where something was cut. */
export function cutTo(width: Millimetres, words: string, height: Millimetres = LETTER): string {
  if (textWidth(words, height) <= width) return words
  const letters = [...words]
  while (letters.length > 0 && textWidth(`${letters.join('')}…`, height) > width) letters.pop()
  return letters.length === 0 ? '' : `${letters.join('').trimEnd()}…`
}
