import { type Answers, csvOf, type Design, schedulesOf } from '../../engine/index'
import type { Colouring } from '../print/inks'
import type { Fonts } from '../print/pdf'
import { schedulesPdf } from '../print/schedulespdf'
import { xlsxOf } from '../print/xlsx'

/** The schedules of a design as files: one PDF, one workbook, and a table of comma-separated values each. */
export function scheduleFiles(
  design: Design,
  answers: Answers,
  wish: { readonly fonts: Fonts; readonly colouring: Colouring; readonly paper: string },
): [name: string, content: Uint8Array | string][] {
  const schedules = schedulesOf(design, answers)
  const { fonts, colouring, paper } = wish
  const form = paper === 'A4' ? 'A4-portrait' : 'A3-landscape'
  return [
    ['schedules.pdf', schedulesPdf(design, answers, { fonts, colouring, form })],
    ['schedules.xlsx', xlsxOf(schedules)],
    ...schedules.map((s): [string, string] => [`schedule-${s.key}.csv`, csvOf(s)]),
  ]
}
