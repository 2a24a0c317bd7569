import { findingBlocks } from '../findingblocks'
import { columnWidth, flow } from '../flow'
import { checkBlocks, designerBlocks, ruleSetBlocks } from '../rulesetblocks'
import { pageOf } from '../schedules/page'
import type { Sheet } from '../sheet'
import type { PackContext } from './section'
import { tableForm } from './tableform'

const COLUMNS = { 'A4-portrait': 1, 'A3-landscape': 3 } as const

/** What the checks found, by which rules, without the drawing: parts and conductors go by their designations. */
export function findingSheets({ design, findings, paper }: PackContext): readonly Sheet[] {
  const form = tableForm(paper)
  const page = pageOf(form)
  const width = columnWidth(page.area, COLUMNS[form])
  const blocks = [
    ...findingBlocks(design, findings, null, width),
    ...designerBlocks(design, width),
    ...ruleSetBlocks(design, findings, width),
    ...checkBlocks(width),
  ]
  const pages = flow(blocks, page.area, COLUMNS[form])
  return pages.map(({ marks, titles }, i): Sheet => {
    const words = {
      documentType: 'Findings and rule set',
      subtitle: titles.join(', '),
      number: i + 1,
      of: pages.length,
      date: design.settings.date,
    }
    return {
      title: `${i + 1} ${titles.join(', ') || 'Continued'}`,
      w: page.paper.w,
      h: page.paper.h,
      marks: [...page.base(design, words), ...marks],
      links: [],
    }
  })
}
