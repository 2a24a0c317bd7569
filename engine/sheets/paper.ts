import type { Millimetres } from '../units'

export type PaperSize = 'A2' | 'A3' | 'A4'

export interface Paper {
  readonly size: PaperSize
  readonly w: Millimetres
  readonly h: Millimetres
  /** Columns and rows of fields on the frame (ISO 5457). */
  readonly columns: number
  readonly rows: number
}

/** Trimmed sheets of ISO 5457, landscape, and the number of fields on their frame. */
export const PAPERS: Readonly<Record<PaperSize, Paper>> = {
  A4: { size: 'A4', w: 297, h: 210, columns: 6, rows: 4 },
  A3: { size: 'A3', w: 420, h: 297, columns: 8, rows: 6 },
  A2: { size: 'A2', w: 594, h: 420, columns: 12, rows: 8 },
}

/** The next larger sheet; undefined for the largest. */
export const largerThan = ({ size }: Paper): Paper | undefined =>
  size === 'A4' ? PAPERS.A3 : size === 'A3' ? PAPERS.A2 : undefined

export interface Area {
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
}

/** Margins of ISO 5457: 20 mm for filing on the left, 10 mm on the other sides. */
const FILING = 20
const MARGIN = 10

/** The drawing space inside the frame. */
export const insideOf = ({ w, h }: Paper): Area => ({
  x: FILING,
  y: MARGIN,
  w: w - FILING - MARGIN,
  h: h - 2 * MARGIN,
})

/** Length of a field of the frame; fields are counted out from the middle of the sheet. */
const FIELD: Millimetres = 50

/** Edges of the fields along one side, from `start` to `end` of the drawing space. */
export function fieldEdges(
  middle: Millimetres,
  count: number,
  start: Millimetres,
  end: Millimetres,
): number[] {
  const inner = Array.from({ length: count - 1 }, (_, i) => middle + (i + 1 - count / 2) * FIELD)
  return [start, ...inner, end]
}

/** Letters of the rows, top to bottom; I and O are left out, as they read as numerals. */
export const ROW_LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

/** Field of a place on the sheet, "B4": letter from top to bottom, numeral from left to right. */
export function zoneOf(paper: Paper, x: Millimetres, y: Millimetres): string {
  const inside = insideOf(paper)
  const column = indexIn(fieldEdges(paper.w / 2, paper.columns, inside.x, inside.x + inside.w), x)
  const row = indexIn(fieldEdges(paper.h / 2, paper.rows, inside.y, inside.y + inside.h), y)
  return `${ROW_LETTERS[row]}${column + 1}`
}

function indexIn(edges: readonly number[], at: number): number {
  const i = edges.findIndex((edge, k) => k > 0 && at < edge)
  return i < 0 ? edges.length - 2 : i - 1
}
