import { line, rect } from '../kinds/draw'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { LARGE, textMark } from './block'
import { fieldEdges, insideOf, type Paper, ROW_LETTERS } from './paper'

/** Width of the strip of letters and numerals outside the frame. */
const STRIP: Millimetres = 5
/** Centring marks reach this far inside the frame, but for the one below: it would run into the title block. */
const CENTRING: Millimetres = 5

/** Frame, fields and centring marks after ISO 5457. */
export function frameMarks(paper: Paper): Mark[] {
  const { x, y, w, h } = insideOf(paper)
  const [right, bottom] = [x + w, y + h]
  const columns = fieldEdges(paper.w / 2, paper.columns, x, right)
  const rows = fieldEdges(paper.h / 2, paper.rows, y, bottom)
  const [midX, midY] = [paper.w / 2, paper.h / 2]
  return [
    rect(x - STRIP, y - STRIP, w + 2 * STRIP, h + 2 * STRIP, { pen: 'thin' }),
    rect(x, y, w, h, { pen: 'strong' }),
    ...[y - STRIP, bottom].flatMap((top) => [
      ...columns.slice(1, -1).map((at) => line([at, top, at, top + STRIP], { pen: 'thin' })),
      ...middles(columns).map((at, i) => lettered(at, top + STRIP / 2, `${i + 1}`)),
    ]),
    ...[x - STRIP, right].flatMap((left) => [
      ...rows.slice(1, -1).map((at) => line([left, at, left + STRIP, at], { pen: 'thin' })),
      ...middles(rows).map((at, i) => lettered(left + STRIP / 2, at, ROW_LETTERS[i]!)),
    ]),
    line([midX, 0, midX, y + CENTRING], { pen: 'strong' }),
    line([midX, paper.h, midX, bottom], { pen: 'strong' }),
    line([0, midY, x + CENTRING, midY], { pen: 'strong' }),
    line([paper.w, midY, right - CENTRING, midY], { pen: 'strong' }),
  ]
}

const middles = (edges: readonly number[]): number[] =>
  edges.slice(1).map((edge, i) => (edge + edges[i]!) / 2)

const lettered = (x: Millimetres, y: Millimetres, text: string): Mark =>
  textMark(x, y + LARGE / 2, { text, height: LARGE }, { anchor: 'middle' })
