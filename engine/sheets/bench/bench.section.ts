import { builtFindings } from '../../rules/builtfindings'
import type { PackSection } from '../packs/section'
import { tableForm } from '../packs/tableform'
import { tableSheets } from '../schedules/schedulesheets'
import { benchList } from './benchlist'

export const benchSection: PackSection = {
  key: 'bench-list',
  title: 'Bench list',
  readers: ['workshop'],
  sheets: ({ design, answers, findings, paper }) => {
    const built = builtFindings(design, findings)
    const list = benchList(design, built?.answers ?? answers, 'part', built)
    return list.rows.length === 0 ? [] : tableSheets(design, [list], { form: tableForm(paper) })
  },
}
