import type { Answers } from '../../calc/answers'
import type { Design } from '../../model/design'
import type { Making } from '../../tables/making'
import { columnWidth } from '../flow'
import type { Sheet } from '../sheet'
import { schedulesOf } from './all'
import { type Page, type PageForm, pageOf } from './page'
import type { Schedule } from './schedule'
import { type ColumnTable, type SetPage, setTables } from './settables'
import { tableBlocks } from './tableblocks'

export interface ScheduleSheetOptions {
  /** Default A4, upright. */
  readonly form?: PageForm
  readonly making?: Making
  /** Date of issue, ISO 8601. Default: the date of the design. */
  readonly date?: string
  /** Number of the first of these sheets, and of all sheets of the pack that they stand in. Default: a set of their own. */
  readonly first?: number
  readonly of?: number
  /** Default: workshop schedules. */
  readonly documentType?: string
}

/** A sheet with the titles of the tables that stand on it. */
export interface TableSheet extends Sheet {
  readonly tables: readonly string[]
}

/** Every schedule of the design as sheets, one after the other. Pure. */
export const scheduleSheets = (
  design: Design,
  answers: Answers,
  options: ScheduleSheetOptions = {},
): readonly TableSheet[] => tableSheets(design, schedulesOf(design, answers, options.making), options)

/** Schedules as sheets: frame, title block, cautions, tables with their heads said again. Pure. */
export function tableSheets(
  design: Design,
  schedules: readonly Schedule[],
  options: Omit<ScheduleSheetOptions, 'making'> = {},
): readonly TableSheet[] {
  const page = pageOf(options.form ?? 'A4-portrait')
  const pages = pagesOf(schedules, page)
  const first = options.first ?? 1
  const of = options.of ?? first + pages.length - 1
  const date = options.date ?? design.settings.date
  const documentType = options.documentType ?? 'Workshop schedules'
  return pages.map(({ marks, titles }, i): TableSheet => {
    const subtitle = titles.join(', ')
    const words = { documentType, subtitle, number: first + i, of, date }
    return {
      title: `${first + i} ${subtitle}`,
      w: page.paper.w,
      h: page.paper.h,
      marks: [...page.base(design, words), ...marks],
      links: [],
      tables: titles,
    }
  })
}

/** A sheet with no more rows than this looks empty. */
const FEW_ROWS = 10

/**
 * Neighbours that share sheets: a schedule joins the ones before it where all of it has room on their last sheet, or
 * where they are a few rows on a sheet of their own and it saves that sheet.
 */
export function sharedOut(schedules: readonly Schedule[], form: PageForm): readonly (readonly Schedule[])[] {
  const page = pageOf(form)
  const groups: { readonly schedules: Schedule[]; sheets: number }[] = []
  for (const schedule of schedules) {
    const last = groups.at(-1)
    const alone = pagesOf([schedule], page).length
    const both = last ? pagesOf([...last.schedules, schedule], page).length : Infinity
    const few = last && last.schedules.reduce((sum, s) => sum + s.rows.length, 0) <= FEW_ROWS
    if (last && (both === last.sheets || (few && both < last.sheets + alone))) {
      last.schedules.push(schedule)
      last.sheets = both
    } else groups.push({ schedules: [schedule], sheets: alone })
  }
  return groups.map((g) => g.schedules)
}

/** Tables that are narrow enough stand in columns; the others take the whole width. */
const pagesOf = (schedules: readonly Schedule[], { area, columns }: Page): SetPage[] =>
  setTables(
    schedules.map((s) => inColumns(s, columnWidth(area, columns), columns) ?? across(s, area.w)),
    area,
  )

function inColumns(schedule: Schedule, width: number, columns: number): ColumnTable | null {
  if (columns === 1) return null
  const table = tableBlocks(schedule, width, false)
  return table.cramped ? null : { table, columns }
}

/** Every column side by side where there is room, otherwise with some below one another. */
function across(schedule: Schedule, width: number): ColumnTable {
  const wide = tableBlocks(schedule, width, false)
  return { table: wide.cramped ? tableBlocks(schedule, width, true) : wide, columns: 1 }
}
