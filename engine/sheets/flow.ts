import { line } from '../kinds/draw'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { LARGE, LEAST, moved, textMark, USUAL } from './block'
import { type Weight, wrapTo } from './measure'
import type { Area } from './paper'
import type { SheetLink } from './sheet'

/** A piece of a column that is never broken, from its top left corner. */
export interface FlowBlock {
  readonly h: Millimetres
  readonly marks: readonly Mark[]
  /** Never the last of a column: a heading. */
  readonly leads?: boolean
  /** The first of a section: a heading. */
  readonly begins?: boolean
  /** What the section is called. */
  readonly title?: string
  /** Places in it that lead to another sheet. */
  readonly links?: readonly SheetLink[]
  /** What is said again above it where it is the first of a column: a row far from its heading. */
  readonly again?: FlowBlock
}

export interface FlowPage {
  readonly marks: readonly Mark[]
  readonly links: readonly SheetLink[]
  /** Sections that begin on it. */
  readonly titles: readonly string[]
}

const BETWEEN_COLUMNS: Millimetres = 8

export const columnWidth = (area: Area, columns: number): Millimetres =>
  (area.w - BETWEEN_COLUMNS * (columns - 1)) / columns

/**
 * Sets blocks into columns of an area, from the left, over as few pages as hold them in order.
 * The last page is filled evenly; where no more than the tail of a section would stand on it, all of that section does.
 */
export function flow(blocks: readonly FlowBlock[], area: Area, columns: number): FlowPage[] {
  const step = columnWidth(area, columns) + BETWEEN_COLUMNS
  const left = ({ column }: Spot): Millimetres => area.x + column * step
  return evenedOut(pagesOf(blocks, area.h, columns), area.h, columns).map((page) => ({
    marks: page.flatMap((spot) => moved(spot.block.marks, left(spot), area.y + spot.y)),
    links: page.flatMap((spot) =>
      (spot.block.links ?? []).map((l) => ({ ...l, x: l.x + left(spot), y: l.y + area.y + spot.y })),
    ),
    titles: page.flatMap(({ block }) => block.title ?? []),
  }))
}

/** Where a block stands on its page. */
interface Spot {
  readonly block: FlowBlock
  readonly column: number
  readonly y: Millimetres
  /** Said again: not one of the blocks that are set. */
  readonly again?: boolean
}

/** The blocks that are set on pages, in their order. */
const blocksOn = (pages: readonly (readonly Spot[])[]): FlowBlock[] =>
  pages.flat().flatMap(({ block, again }) => (again ? [] : [block]))

function pagesOf(blocks: readonly FlowBlock[], height: Millimetres, columns: number): Spot[][] {
  const pages: Spot[][] = []
  let column = columns
  let y = 0
  blocks.forEach((block, i) => {
    if (column === columns || (y > 0 && y + heightWithNext(blocks, i) > height)) {
      column = column >= columns - 1 ? 0 : column + 1
      if (column === 0) pages.push([])
      y = block.again?.h ?? 0
      if (block.again) pages.at(-1)!.push({ block: block.again, column, y: 0, again: true })
    }
    pages.at(-1)!.push({ block, column, y })
    y += block.h
  })
  return pages
}

/** A block with those that it does not stand without. */
function heightWithNext(blocks: readonly FlowBlock[], i: number): Millimetres {
  let h = 0
  for (let k = i; k < blocks.length; k++) {
    h += blocks[k]!.h
    if (!blocks[k]!.leads) break
  }
  return h
}

/** Steps in which the height of an even last page is sought, mm. */
const STEP = 2

function evenedOut(pages: readonly Spot[][], height: Millimetres, columns: number): Spot[][] {
  if (pages.length === 0) return []
  const all = blocksOn(pages)
  const last = all.slice(-tailOf(pages, height, columns))
  const before = pagesOf(all.slice(0, all.length - last.length), height, columns)
  const least = Math.max(...last.map((_, i) => heightWithNext(last, i)))
  for (let h = least; h < height; h += STEP) {
    const even = pagesOf(last, h, columns)
    if (even.length === 1) return [...before, even[0]!]
  }
  return [...before, ...pagesOf(last, height, columns)]
}

/** How many blocks the last page is to hold. */
function tailOf(pages: readonly Spot[][], height: Millimetres, columns: number): number {
  const all = blocksOn(pages)
  const tail = blocksOn(pages.slice(-1))
  const begin = all.findLastIndex((block, i) => block.begins && i <= all.length - tail.length)
  const section = all.slice(Math.max(0, begin))
  const isShort = tail.reduce((sum, block) => sum + block.h, 0) < height
  const fits = begin > 0 && pagesOf(section, height, columns).length === 1
  return isShort && fits ? section.length : tail.length
}

/** A list below its heading and what introduces it: no column ends with the first row of it, or begins with the last. */
export const listBlocks = (above: readonly FlowBlock[], rows: readonly FlowBlock[]): FlowBlock[] => [
  ...above.map((block) => ({ ...block, leads: true })),
  ...rows.map((row, i) =>
    i + 1 < rows.length && (i === 0 || i === rows.length - 2) ? { ...row, leads: true } : row,
  ),
]

/** A heading with a rule below it. */
export const heading = (text: string, width: Millimetres): FlowBlock => ({
  h: 11,
  marks: [
    textMark(0, 7, { text, height: LARGE, weight: 'bold' }),
    line([0, 8.6, width, 8.6], { pen: 'line' }),
  ],
  leads: true,
  begins: true,
  title: text,
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
