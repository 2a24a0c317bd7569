import { changesSince } from '../../calc/compare/since'
import { asBuilt } from '../../edit/benchfacts'
import type { Design } from '../../model/design'
import { standingWords } from '../../words/standing'
import type { PackSection } from '../packs/section'
import { tableForm } from '../packs/tableform'
import { tableSheets } from '../schedules/schedulesheets'
import { schematicSheets } from '../schematic'
import type { Sheet } from '../sheet'
import { type AnalysedState, analysedState, changeSchedule } from './changelist'

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

/** "B", "after B": short, as a heading must end before the centring mark. */
const numberOf = (design: Design): string => standingWords(design).revision

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
      const title = `What changed: ${numberOf(since.before)} → ${numberOf(design)}`
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
      const title = 'As designed → as built'
      return listSheets(analysedState(design), analysedState(built), title, tableForm(paper))
    },
  },
]
