import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { moved } from '../block'
import { columnWidth, type FlowBlock } from '../flow'
import type { Area } from '../paper'
import type { TableBlocks } from './tableblocks'

/** A table made for one of so many columns of the paper. */
export interface ColumnTable {
  readonly table: TableBlocks
  readonly columns: number
}

/** Marks of one sheet, and the tables that stand on it. */
export interface SetPage {
  readonly marks: Mark[]
  readonly titles: string[]
}

/** Rows that stand below a head at least. */
const TOGETHER = 5
const BETWEEN: Millimetres = 5

/**
 * Sets tables one after the other into an area: pages break between rows, heads and bands are said again, a table
 * that is begun shows some of its rows, and its last row, or that of a band, is not parted from the one before it.
 * Tables made for columns stand side by side below what takes the whole width.
 */
export function setTables(tables: readonly ColumnTable[], area: Area): SetPage[] {
  const pen = new Pen(area)
  for (const { table, columns } of tables) {
    pen.begin(columns, firstHeight(table))
    pen.put(table.head(false), table.title)
    table.rows.forEach((row, i) => {
      const band = table.begins[i] ? table.band(i, false) : null
      if (!pen.holds((band?.h ?? 0) + row.h + lastAfter(table, i))) {
        pen.next()
        pen.put(table.head(true), table.title)
        const again = table.band(i, !table.begins[i])
        if (again) pen.put(again)
      } else if (band) pen.put(band)
      pen.put(row)
    })
  }
  return pen.pages
}

/** Height of the row after one, where it is the last of its band: it stays with the one before it. */
function lastAfter({ rows, begins }: TableBlocks, i: number): Millimetres {
  const next = rows[i + 1]
  const isLast = i + 2 === rows.length || begins[i + 2] === true
  return next && isLast && !begins[i + 1] ? next.h : 0
}

/** Where the next piece goes: a page, a column of it, a height. */
class Pen {
  readonly pages: SetPage[] = []
  private columns = 1
  private column = 0
  private y: Millimetres
  /** Where the columns of this page begin. */
  private top: Millimetres = 0

  constructor(private readonly area: Area) {
    this.y = area.h
  }

  /** Room for a table whose first piece is so high; below what stands here where there is enough. */
  begin(columns: number, h: Millimetres): void {
    const below = this.y + BETWEEN
    if (columns < this.columns) this.page(columns)
    else if (columns > this.columns) {
      if (below + h > this.area.h) this.page(columns)
      else [this.columns, this.column, this.y, this.top] = [columns, 0, below, below]
    } else if (below + h > this.area.h) this.next()
    else this.y = below
  }

  holds(h: Millimetres): boolean {
    return this.y + h <= this.area.h
  }

  next(): void {
    if (this.column + 1 >= this.columns) this.page(this.columns)
    else [this.column, this.y] = [this.column + 1, this.top]
  }

  put({ marks, h }: FlowBlock, title?: string): void {
    const { area, column, columns } = this
    const page = this.pages.at(-1)!
    const pitch = columns === 1 ? 0 : (area.w - columnWidth(area, columns)) / (columns - 1)
    page.marks.push(...moved(marks, area.x + column * pitch, area.y + this.y))
    if (title !== undefined && !page.titles.includes(title)) page.titles.push(title)
    this.y += h
  }

  private page(columns: number): void {
    this.pages.push({ marks: [], titles: [] })
    ;[this.columns, this.column, this.y, this.top] = [columns, 0, 0, 0]
  }
}

/** Head and some rows; all of a short table. */
function firstHeight(table: TableBlocks): Millimetres {
  const rows = table.rows.length <= 2 * TOGETHER ? table.rows : table.rows.slice(0, TOGETHER)
  const bands = rows.map((_, i) => (table.begins[i] ? (table.band(i, false)?.h ?? 0) : 0))
  const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0)
  return table.head(false).h + sum(rows.map((r) => r.h)) + sum(bands)
}
