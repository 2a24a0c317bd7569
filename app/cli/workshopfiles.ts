import {
  type Answers,
  csvOf,
  type Design,
  labelSheets,
  labelTable,
  scheduleSheets,
  schedulesOf,
} from '../../engine/index'
import { designPdf } from '../print/designpdf'
import type { Colouring } from '../print/inks'
import type { Fonts } from '../print/pdf'
import { xlsxOf } from '../print/xlsx'

/** Schedules and labels of a design as files: PDFs, one workbook, and comma-separated values of each table. */
export function workshopFiles(
  design: Design,
  answers: Answers,
  wish: { readonly fonts: Fonts; readonly colouring: Colouring; readonly paper: string },
): [name: string, content: Uint8Array | string][] {
  const schedules = schedulesOf(design, answers)
  const { fonts, colouring, paper } = wish
  const form = paper === 'A4' ? 'A4-portrait' : 'A3-landscape'
  const tables = scheduleSheets(design, answers, { form })
  return [
    ['schedules.pdf', designPdf(design, tables, { title: 'Workshop schedules', fonts, colouring })],
    ['schedules.xlsx', xlsxOf(schedules)],
    ...schedules.map((s): [string, string] => [`schedule-${s.key}.csv`, csvOf(s)]),
    ['labels.pdf', designPdf(design, labelSheets(design), { title: 'Labels', fonts, colouring })],
    ['labels.csv', csvOf(labelTable(design))],
  ]
}
