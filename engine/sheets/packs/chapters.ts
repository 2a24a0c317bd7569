import type { Schedule } from '../schedules/schedule'
import { sharedOut, tableSheets } from '../schedules/schedulesheets'
import type { Sheet } from '../sheet'
import type { PackContext, PackSection } from './section'
import { tableForm } from './tableform'

/** A section as it stands in a pack: its sheets, or the table that is set with those beside it. */
export interface MadeSection {
  readonly section: PackSection
  readonly sheets: readonly Sheet[]
  readonly schedule?: Schedule
}

/** Makes one section. What goes wrong in it is told with its name. */
export function makeSection(section: PackSection, context: PackContext): MadeSection {
  try {
    return section.schedule
      ? { section, sheets: [], schedule: section.schedule(context) }
      : { section, sheets: section.sheets(context) }
  } catch (error) {
    throw new Error(`${section.title}: ${error instanceof Error ? error.message : String(error)}`, {
      cause: error,
    })
  }
}

/** Sheets that stand together, and the sections on them. */
export interface Chapter {
  readonly sheets: readonly Sheet[]
  readonly sections: readonly {
    readonly section: PackSection
    /** Index of its first sheet in the chapter, and how many it stands on. */
    readonly at: number
    readonly count: number
  }[]
}

/** Sections in order: each a chapter of its own, but for tables in a row, which share sheets where there is room. */
export function chaptersOf(made: readonly MadeSection[], context: PackContext): readonly Chapter[] {
  const chapters: Chapter[] = []
  for (let i = 0; i < made.length; i++) {
    const { section, sheets, schedule } = made[i]!
    if (!schedule) {
      if (sheets.length > 0) chapters.push({ sheets, sections: [{ section, at: 0, count: sheets.length }] })
      continue
    }
    let end = i
    while (made[end + 1]?.schedule) end++
    chapters.push(...tableChapters(made.slice(i, end + 1), context))
    i = end
  }
  return chapters
}

function tableChapters(made: readonly MadeSection[], { design, paper }: PackContext): Chapter[] {
  const form = tableForm(paper)
  const tables = made.flatMap(({ schedule }) => (schedule && schedule.rows.length > 0 ? [schedule] : []))
  const groups = sharedOut(tables, form)
  const counts = groups.map((group) => tableSheets(design, group, { form }).length)
  const of = counts.reduce((sum, n) => sum + n, 0)
  let first = 1
  return groups.map((group, g): Chapter => {
    const sheets = tableSheets(design, group, { form, first, of })
    first += counts[g]!
    const sections = made.flatMap(({ section, schedule }) => {
      if (!schedule || !group.includes(schedule)) return []
      const on = sheets.flatMap(({ tables: titles }, i) => (titles.includes(schedule.title) ? [i] : []))
      return [{ section, at: on[0] ?? 0, count: on.length }]
    })
    return { sheets, sections }
  })
}
