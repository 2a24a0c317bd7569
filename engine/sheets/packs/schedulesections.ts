import { makingOf } from '../../model/buying'
import { SCHEDULES } from '../schedules/all'
import { tableSheets } from '../schedules/schedulesheets'
import type { PackContext, PackReader, PackSection } from './section'
import { tableForm } from './tableform'

/** What others than the workshop need of the schedules. */
const ALSO_FOR: Readonly<Record<string, readonly PackReader[]>> = {
  conductors: ['designer'],
  fuses: ['designer', 'customer'],
  switches: ['customer'],
  parts: ['designer'],
}

/** Each schedule as a section of its own; one without rows has nothing to say. */
export const scheduleSections: readonly PackSection[] = SCHEDULES.map(({ key, title, of }) => {
  const schedule = ({ design, answers }: PackContext) => of(design, answers, makingOf(design))
  return {
    ...{ key, title, schedule },
    readers: ['workshop', ...(ALSO_FOR[key] ?? [])],
    sheets: (context) => {
      const table = schedule(context)
      const form = tableForm(context.paper)
      return table.rows.length === 0 ? [] : tableSheets(context.design, [table], { form })
    },
  }
})
