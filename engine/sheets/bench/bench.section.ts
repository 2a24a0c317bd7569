import type { PackSection } from '../packs/section'
import { tableForm } from '../packs/tableform'
import { tableSheets } from '../schedules/schedulesheets'
import { benchList } from './benchlist'

export const benchSection: PackSection = {
  key: 'bench-list',
  title: 'Bench list',
  readers: ['workshop'],
  sheets: ({ design, answers, paper }) => {
    const list = benchList(design, answers)
    return list.rows.length === 0 ? [] : tableSheets(design, [list], { form: tableForm(paper) })
  },
}
