import { line, rect } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { moved, textMark } from '../block'
import { columnWidth, type FlowBlock, heading, small, together } from '../flow'
import { cutTo, type Weight, wrapTo } from '../measure'
import { boxMarks } from './boxmarks'
import { missingIn, missingWords } from './missing'
import { type Column, cellText, headed, type Schedule, type ScheduleRow } from './schedule'
import { glued, layTable, PAD, type Strip, type TableLayout, weightOf } from './tablelayout'

/** A schedule in pieces that are never broken. */
export interface TableBlocks {
  readonly title: string
  /** Heading, what the figures stand on, head of the table; `again` where it goes on: without the notes. */
  readonly head: (again: boolean) => FlowBlock
  /** Rows in order. */
  readonly rows: readonly FlowBlock[]
  /** Heading of the band that a row belongs to; null where the schedule has none. */
  readonly band: (row: number, again: boolean) => FlowBlock | null
  /** True where a row begins a band. */
  readonly begins: readonly boolean[]
  /** Words had to be broken. */
  readonly cramped: boolean
}

/** Free room above and below the words of a cell. */
const GAP: Millimetres = 0.75

/** Pieces of a schedule for a column of paper. */
export function tableBlocks(schedule: Schedule, width: Millimetres, narrow: boolean): TableBlocks {
  const layout = layTable(schedule, width, narrow)
  const bandColumn = schedule.columns.find((c) => c.band)
  const bands = schedule.rows.map((row) =>
    bandColumn ? cellText(row.cells[bandColumn.key]!, bandColumn) : '',
  )
  return {
    title: schedule.title,
    head: (again) => headBlock(schedule, layout, width, again),
    rows: schedule.rows.map((row) => rowBlock(layout, row)),
    band: (row, again) => (bandColumn ? bandBlock(bands[row]!, layout, again) : null),
    begins: bands.map((band, i) => bandColumn !== undefined && band !== bands[i - 1]),
    cramped: layout.cramped,
  }
}

const CONTINUED = ' (continued)'

function headBlock(schedule: Schedule, layout: TableLayout, width: Millimetres, again: boolean): FlowBlock {
  const title = heading(again ? schedule.title + CONTINUED : schedule.title, width)
  const above = again ? title : together([title, notesBlock(schedule, width)])
  const cells = cellsBlock(layout, headed, true)
  const bottom = above.h + cells.h
  return {
    h: bottom,
    marks: [
      ...above.marks,
      rect(0, above.h, layout.w, cells.h, { pen: 'thin', ink: 'tint', fill: 'tint' }),
      ...moved(cells.marks, 0, above.h),
      line([0, bottom, layout.w, bottom], { pen: 'line' }),
    ],
  }
}

function rowBlock(layout: TableLayout, row: ScheduleRow): FlowBlock {
  const cells = cellsBlock(layout, (c) => glued(cellText(row.cells[c.key]!, c)), false)
  return { h: cells.h, marks: [...cells.marks, line([0, cells.h, layout.w, cells.h], { pen: 'thin' })] }
}

function bandBlock(text: string, { w, height }: TableLayout, again: boolean): FlowBlock {
  const h = height * 1.5 + 2.5
  const words = cutTo(w - 2 * PAD, again ? text + CONTINUED : text, height, 'bold')
  return {
    h,
    marks: [
      textMark(PAD, h - GAP - height * 0.35, { text: words, height, weight: 'bold' }),
      line([0, h, w, h], { pen: 'line' }),
    ],
  }
}

/** One line of cells across the strips. A cell of a strip without words takes no room, but for the first. */
function cellsBlock(
  { strips, height }: TableLayout,
  textOf: (c: Column) => string,
  head: boolean,
): FlowBlock {
  const pitch = height * 1.5
  let tallest = 1
  const marks = strips.flatMap((strip, k) => {
    let lines = 0
    return strip.columns.flatMap((column, i): Mark[] => {
      const text = textOf(column)
      if (text === '' && i > 0) return []
      if (column.box && !head) return text === '' ? [] : boxMarks(strip.x + PAD, GAP + lines * pitch, text)
      const weight = head ? 'bold' : weightOf(k === 0, i)
      const found = wrapTo(strip.w - 2 * PAD, text, height, weight).map((words, n) =>
        cellMark(strip, words, GAP + (lines + n) * pitch + height * 1.15, height, weight),
      )
      lines += found.length
      tallest = Math.max(tallest, lines)
      return found
    })
  })
  return { h: tallest * pitch + 2 * GAP, marks }
}

function cellMark(
  { x, w, columns: [first] }: Strip,
  text: string,
  y: Millimetres,
  height: Millimetres,
  weight: Weight,
): Mark {
  const align = first?.align ?? 'start'
  const at = align === 'end' ? x + w - PAD : x + PAD
  return textMark(at, y, { text, height, weight }, { anchor: align })
}

/** Lines of text longer than this are hard to follow. */
const LONGEST_LINE: Millimetres = 200

/** What the figures stand on and why some are missing, side by side where the table is wide. */
function notesBlock(schedule: Schedule, width: Millimetres): FlowBlock {
  const missing = missingIn(schedule).map((m) => `– ${missingWords(m)}`)
  const none = schedule.rows.length === 0 ? ['There is none in this design.'] : []
  const columns = width > LONGEST_LINE ? 2 : 1
  const w = columnWidth({ x: 0, y: 0, w: width, h: 0 }, columns)
  const blocks = [...none, ...schedule.notes, ...missing].map((text) => small(text, w))
  const half = columns === 1 ? blocks.length : Math.ceil(blocks.length / 2)
  const [left, right] = [together(blocks.slice(0, half)), together(blocks.slice(half))]
  return {
    h: Math.max(left.h, right.h) + 1.5,
    marks: [...left.marks, ...moved(right.marks, width - w, 0)],
  }
}
