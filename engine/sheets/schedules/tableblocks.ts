import { line, rect } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { moved, textMark } from '../block'
import { type FlowBlock, heading, small } from '../flow'
import { cutTo, type Weight, wrapTo } from '../measure'
import { missingIn, missingWords } from './missing'
import { type Column, cellText, headed, type Schedule, type ScheduleRow } from './schedule'
import { layTable, PAD, type Strip, type TableLayout } from './tablelayout'

/** A schedule in pieces that are never broken. */
export interface TableBlocks {
  readonly title: string
  /** Heading with the head of the table; `again` where it goes on. */
  readonly head: (again: boolean) => FlowBlock
  /** Rows in order. */
  readonly rows: readonly FlowBlock[]
  /** Heading of the band that a row belongs to; null where the schedule has none. */
  readonly band: (row: number, again: boolean) => FlowBlock | null
  /** True where a row begins a band. */
  readonly begins: readonly boolean[]
  readonly notes: readonly FlowBlock[]
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
    head: (again) => headBlock(schedule.title, layout, width, again),
    rows: schedule.rows.map((row) => rowBlock(layout, row)),
    band: (row, again) => (bandColumn ? bandBlock(bands[row]!, layout, again) : null),
    begins: bands.map((band, i) => bandColumn !== undefined && band !== bands[i - 1]),
    notes: noteBlocks(schedule, width),
    cramped: layout.cramped,
  }
}

const CONTINUED = ' (continued)'

function headBlock(title: string, layout: TableLayout, width: Millimetres, again: boolean): FlowBlock {
  const top = heading(again ? title + CONTINUED : title, width)
  const cells = cellsBlock(layout, headed, 'bold', true)
  const marks = moved(cells.marks, 0, top.h)
  const bottom = top.h + cells.h
  return {
    h: bottom,
    marks: [
      ...top.marks,
      rect(0, top.h, layout.w, cells.h, { pen: 'thin', ink: 'tint', fill: 'tint' }),
      ...marks,
      line([0, bottom, layout.w, bottom], { pen: 'line' }),
    ],
  }
}

function rowBlock(layout: TableLayout, row: ScheduleRow): FlowBlock {
  const cells = cellsBlock(layout, (c) => cellText(row.cells[c.key]!, c), 'regular', false)
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
  weight: Weight,
  head: boolean,
): FlowBlock {
  const pitch = height * 1.5
  let tallest = 1
  const marks = strips.flatMap((strip, k) => {
    let lines = 0
    return strip.columns.flatMap((column, i): Mark[] => {
      const text = textOf(column)
      if (text === '' && i > 0) return []
      const bold = !head && k === 0 && i === 0 ? 'bold' : weight
      const found = wrapTo(strip.w - 2 * PAD, text, height, bold).map((words, n) =>
        cellMark(strip, column, words, GAP + (lines + n) * pitch + height * 1.15, height, bold),
      )
      lines += found.length
      tallest = Math.max(tallest, lines)
      return found
    })
  })
  return { h: tallest * pitch + 2 * GAP, marks }
}

function cellMark(
  { x, w }: Strip,
  { align }: Column,
  text: string,
  y: Millimetres,
  height: Millimetres,
  weight: Weight,
): Mark {
  const at = align === 'end' ? x + w - PAD : x + PAD
  return textMark(at, y, { text, height, weight }, { anchor: align })
}

function noteBlocks(schedule: Schedule, width: Millimetres): FlowBlock[] {
  const missing = missingIn(schedule).map((m) => `– ${missingWords(m)}`)
  return [
    { h: 1.5, marks: [] },
    ...(schedule.rows.length === 0 ? [small('There is none in this design.', width)] : []),
    ...[...schedule.notes, ...missing].map((text) => small(text, width)),
  ]
}
