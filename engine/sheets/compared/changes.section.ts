import { changesSince } from '../../calc/compare/since'
import { asBuilt } from '../../edit/benchfacts'
import type { PackSection } from '../packs/section'
import { tableForm } from '../packs/tableform'
import { tableSheets } from '../schedules/schedulesheets'
import { schematicSheets } from '../schematic'
import type { Sheet } from '../sheet'
import { type AnalysedState, analysedState, called, changeSchedule } from './changelist'

const listSheets = (
  before: AnalysedState,
  after: AnalysedState,
  title: string,
  form: ReturnType<typeof tableForm>,
): readonly Sheet[] => {
  const schedule = changeSchedule(before, after, title)
  return schedule.rows.length === 0
    ? []
    : tableSheets(after.design, [schedule], { form, documentType: 'What changed' })
}

/** What changed since the revision before, and what was built otherwise than drawn. */
export const changeSections: readonly PackSection[] = [
  {
    key: 'clouds',
    title: 'Schematic with clouds round what changed',
    readers: [],
    sheets: ({ design, answers, findings, paper, view }) =>
      changesSince(design) ? schematicSheets(design, answers, findings, { paper, view, clouds: true }) : [],
  },
  {
    key: 'changes',
    title: 'What changed',
    readers: ['designer', 'workshop'],
    sheets: ({ design, paper }) => {
      const since = changesSince(design)
      if (!since) return []
      const title = `What changed: ${called(since.before)} → ${called(design)}`
      return listSheets(analysedState(since.before), analysedState(design), title, tableForm(paper))
    },
  },
  {
    key: 'as-built',
    title: 'Built otherwise than drawn',
    readers: ['designer'],
    sheets: ({ design, paper }) => {
      const built = asBuilt(design)
      if (built === design) return []
      const title = 'Built otherwise than drawn: as designed → as built'
      return listSheets(analysedState(design), analysedState(built), title, tableForm(paper))
    },
  },
]
