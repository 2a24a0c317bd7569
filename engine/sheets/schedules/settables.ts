import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { moved } from '../block'
import { columnWidth, type FlowBlock } from '../flow'
import type { Area } from '../paper'
import type { TableBlocks } from './tableblocks'

/** Marks of one sheet, and the tables that stand on it. */
export interface SetPage {
  readonly marks: Mark[]
  readonly titles: string[]
}

/** Rows that stand below a head at least. */
const TOGETHER = 5
const BETWEEN: Millimetres = 5

/**
 * Sets tables one after the other into columns of an area: pages break between rows, heads and bands are said again,
 * a table that is begun shows some of its rows.
 */
export function setTables(tables: readonly TableBlocks[], area: Area, columns: number): SetPage[] {
  const pages: SetPage[] = []
  const width = columnWidth(area, columns)
  const pitch = columns === 1 ? 0 : (area.w - width) / (columns - 1)
  let column = columns
  let y = area.h

  const next = (): void => {
    column = column >= columns - 1 ? 0 : column + 1
    if (column === 0) pages.push({ marks: [], titles: [] })
    y = 0
  }
  const put = ({ marks, h }: FlowBlock): void => {
    pages.at(-1)!.marks.push(...moved(marks, area.x + column * pitch, area.y + y))
    y += h
  }
  const begin = (table: TableBlocks, again: boolean): void => {
    const { titles } = pages.at(-1)!
    if (!titles.includes(table.title)) titles.push(table.title)
    put(table.head(again))
  }

  for (const table of tables) {
    if (pages.length > 0 && y > 0) y += BETWEEN
    if (pages.length === 0 || y + firstHeight(table) > area.h) next()
    begin(table, false)
    table.rows.forEach((row, i) => {
      const band = table.begins[i] ? table.band(i, false) : null
      if (y + row.h + (band?.h ?? 0) > area.h) {
        next()
        begin(table, true)
        const again = table.band(i, !table.begins[i])
        if (again) put(again)
      } else if (band) put(band)
      put(row)
    })
  }
  return pages
}

/** Head and some rows; all of a short table. */
function firstHeight(table: TableBlocks): Millimetres {
  const rows = table.rows.length <= 2 * TOGETHER ? table.rows : table.rows.slice(0, TOGETHER)
  const bands = rows.map((_, i) => (table.begins[i] ? (table.band(i, false)?.h ?? 0) : 0))
  const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0)
  return table.head(false).h + sum(rows.map((r) => r.h)) + sum(bands)
}
