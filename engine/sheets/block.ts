import type { Ink, Mark, TextMark } from '../model/marks'
import type { Millimetres } from '../units'
import { printable, type Weight, widthOf } from './measure'

/** A run of text of one look. */
export interface Piece {
  readonly text: string
  readonly height?: Millimetres
  readonly weight?: Weight
  readonly ink?: Ink
}

/** Lettering heights of ISO 3098, mm. Nothing on paper is lettered smaller than `LEAST`. */
export const LEAST: Millimetres = 1.8
export const USUAL: Millimetres = 2.5
export const LARGE: Millimetres = 3.5
export const TITLE: Millimetres = 5
const HEIGHTS: readonly Millimetres[] = [LEAST, USUAL, LARGE, TITLE, 7, 10]
/** From one height to the next, as near as the rounded series allows. */
export const LETTERING_STEP = 1.4

/** The height of the series that is nearest. */
const inSeries = (height: Millimetres): Millimetres =>
  HEIGHTS.reduce((best, h) => (Math.abs(h - height) < Math.abs(best - height) ? h : best))

/** Room below the baseline and above the capitals, as a part of the height: ISO 3098 asks for lines 1.4 to 1.6 apart. */
const LEADING = 1.5

export interface Block {
  readonly w: Millimetres
  readonly h: Millimetres
  /** Relative to the top left corner. */
  readonly marks: readonly TextMark[]
}

/** Lines of text, each of one or more pieces, as a block with its marks. */
export function blockOf(
  lines: readonly (readonly Piece[])[],
  anchor: 'start' | 'middle' | 'end' = 'start',
): Block {
  const widths = lines.map((line) =>
    line.reduce((sum, p) => sum + widthOf(p.text, p.height ?? LEAST, p.weight), 0),
  )
  const w = Math.max(0, ...widths)
  const marks: TextMark[] = []
  let y = 0
  lines.forEach((line, i) => {
    const height = Math.max(LEAST, ...line.map((p) => p.height ?? LEAST))
    const baseline = y + height * (0.15 + 1)
    const spare = w - widths[i]!
    let x = anchor === 'start' ? 0 : anchor === 'middle' ? spare / 2 : spare
    for (const p of line) {
      marks.push(textMark(x, baseline, p))
      x += widthOf(p.text, p.height ?? LEAST, p.weight)
    }
    y += height * LEADING
  })
  return { w, h: y, marks }
}

export const textMark = (
  x: Millimetres,
  y: Millimetres,
  piece: Piece,
  more: Partial<Pick<TextMark, 'anchor' | 'turn'>> = {},
): TextMark => ({
  is: 'text',
  at: [x, y],
  text: printable(piece.text),
  height: piece.height ?? LEAST,
  ...(piece.weight ? { weight: piece.weight } : {}),
  ...(piece.ink ? { ink: piece.ink } : {}),
  ...more,
})

/** Marks moved, and optionally enlarged about the origin first. Pens keep their width, lettering keeps to its series. */
export function moved(marks: readonly Mark[], dx: Millimetres, dy: Millimetres, scale = 1): Mark[] {
  return marks.map((mark): Mark => {
    if (mark.is === 'line')
      return { ...mark, points: mark.points.map(([x, y]) => [x * scale + dx, y * scale + dy] as const) }
    const at = [mark.at[0] * scale + dx, mark.at[1] * scale + dy] as const
    return mark.is === 'text'
      ? { ...mark, at, height: scale === 1 ? mark.height : inSeries(mark.height * scale) }
      : { ...mark, at, r: mark.r * scale }
  })
}
