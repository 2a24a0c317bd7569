import { line } from '../kinds/draw'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { LARGE, LEAST, moved, textMark, USUAL } from './block'
import { type Weight, wrapTo } from './measure'
import type { Area } from './paper'

/** A piece of a column that is never broken, from its top left corner. */
export interface FlowBlock {
  readonly h: Millimetres
  readonly marks: readonly Mark[]
  /** Never the last of a column: a heading. */
  readonly leads?: boolean
}

const BETWEEN_COLUMNS: Millimetres = 8

export const columnWidth = (area: Area, columns: number): Millimetres =>
  (area.w - BETWEEN_COLUMNS * (columns - 1)) / columns

/** Sets blocks into columns of an area, from the left, over as many pages as it takes: the marks of each page. */
export function flow(blocks: readonly FlowBlock[], area: Area, columns: number): Mark[][] {
  const pages: Mark[][] = []
  const width = columnWidth(area, columns)
  let column = columns
  let y = 0
  blocks.forEach((block, i) => {
    const next = block.leads ? (blocks[i + 1]?.h ?? 0) : 0
    if (column === columns || (y > 0 && y + block.h + next > area.h)) {
      column = column >= columns - 1 ? 0 : column + 1
      if (column === 0) pages.push([])
      y = 0
    }
    pages.at(-1)!.push(...moved(block.marks, area.x + column * (width + BETWEEN_COLUMNS), area.y + y))
    y += block.h
  })
  return pages
}

/** A heading with a rule below it. */
export const heading = (text: string, width: Millimetres): FlowBlock => ({
  h: 11,
  marks: [
    textMark(0, 7, { text, height: LARGE, weight: 'bold' }),
    line([0, 8.6, width, 8.6], { pen: 'line' }),
  ],
  leads: true,
})

interface ParagraphWords {
  readonly height?: Millimetres
  readonly weight?: Weight
  readonly indent?: Millimetres
  /** Stands before the first line, in the indent. */
  readonly lead?: string
  /** Free room below. */
  readonly after?: Millimetres
}

export function paragraph(text: string, width: Millimetres, words: ParagraphWords = {}): FlowBlock {
  const { height = USUAL, weight = 'regular', indent = 0, lead, after = 1 } = words
  const pitch = height * 1.5
  const lines = wrapTo(width - indent, text, height, weight)
  return {
    h: lines.length * pitch + after,
    marks: [
      ...(lead === undefined ? [] : [textMark(0, height * 1.15, { text: lead, height, weight: 'bold' })]),
      ...lines.map((l, i) => textMark(indent, i * pitch + height * 1.15, { text: l, height, weight })),
    ],
  }
}

/** Blocks one below the other as one that is not broken. */
export function together(blocks: readonly FlowBlock[]): FlowBlock {
  let h = 0
  const marks: Mark[] = []
  for (const block of blocks) {
    marks.push(...moved(block.marks, 0, h))
    h += block.h
  }
  return { h, marks }
}

export const small = (text: string, width: Millimetres, words: ParagraphWords = {}): FlowBlock =>
  paragraph(text, width, { height: LEAST, after: 0.6, ...words })
