import { commissioningRecord } from '../../calc/commissioning/record'
import type { Design } from '../../model/design'
import { moved } from '../block'
import { flow } from '../flow'
import type { PackSection } from '../packs/section'
import { pageOf } from '../schedules/page'
import type { Sheet } from '../sheet'
import { columnsFor, HEAD, headMarks } from './columns'
import { goneBlocks, openingBlocks, signatureBlocks } from './endblocks'
import { groupBlocks } from './stepblocks'

/** The record on upright A4, for a clipboard: boxes to be written in, filled as far as readings were entered. */
export function commissioningSheets(design: Design): readonly Sheet[] {
  const record = commissioningRecord(design)
  if (record.groups.length === 0) return []
  const page = pageOf('A4-portrait')
  const c = columnsFor(page.area.w)
  let number = 1
  const blocks = [
    ...openingBlocks(design, record, c.width),
    ...record.groups.flatMap((group) => {
      const first = number
      number += group.steps.length
      return groupBlocks(design, group, first, c)
    }),
    ...goneBlocks(record, c.width),
    ...signatureBlocks(record, c.width),
  ]
  const area = { ...page.area, y: page.area.y + HEAD, h: page.area.h - HEAD }
  const pages = flow(blocks, area, 1)
  let begun = 'Record'
  return pages.map(({ marks, titles, links }, i): Sheet => {
    const subtitle = titles.join(', ') || `${begun}, continued`
    begun = titles.at(-1) ?? begun
    const words = {
      documentType: 'Commissioning record',
      subtitle,
      number: i + 1,
      of: pages.length,
      date: design.settings.date,
    }
    return {
      title: `${i + 1} ${subtitle}`,
      w: page.paper.w,
      h: page.paper.h,
      marks: [...page.base(design, words), ...moved(headMarks(c), page.area.x, page.area.y), ...marks],
      links,
    }
  })
}

/** As it stands, and blank for whoever goes through it anew. */
export const commissioningSections: readonly PackSection[] = [
  {
    key: 'commissioning',
    title: 'Commissioning record',
    readers: ['workshop'],
    sheets: ({ design }) => commissioningSheets(design),
  },
  {
    key: 'commissioning-blank',
    title: 'Commissioning record, blank',
    readers: [],
    sheets: ({ design: { commissioning: _taken, ...design } }) => commissioningSheets(design),
  },
]
