import { changesSince } from '../../calc/compare/since'
import type { PackSection } from '../packs/section'
import { tableForm } from '../packs/tableform'
import { tableSheets } from '../schedules/schedulesheets'
import { analysedState, changeSchedule } from './changelist'

/** What changed since the revision before; nothing where there is none, or where nothing did. */
export const changesSection: PackSection = {
  key: 'changes',
  title: 'What changed',
  readers: ['designer', 'workshop'],
  sheets: ({ design, answers, findings, paper }) => {
    const since = changesSince(design)
    if (!since) return []
    const schedule = changeSchedule(analysedState(since.before), { design, answers, findings })
    return schedule.rows.length === 0
      ? []
      : tableSheets(design, [schedule], { form: tableForm(paper), documentType: 'What changed' })
  },
}
