import { strToU8, type Zippable, zipSync } from 'fflate'
import { csvOf, labelTable, type PackContext, schedulesOf } from '../../engine/index'
import { xlsxOf } from './xlsx'

type Made = Pick<PackContext, 'design' | 'answers'>

/** Every schedule and the labels as comma-separated values, with the names of their files. */
export const csvFiles = ({ design, answers }: Made): readonly (readonly [name: string, text: string])[] => [
  ...schedulesOf(design, answers).map((s) => [`schedule-${s.key}.csv`, csvOf(s)] as const),
  ['labels.csv', csvOf(labelTable(design))],
]

/** The same as one ZIP file; its times are the earliest that a ZIP file can hold, so that the same tables give the same bytes. */
export function csvBundle(made: Made): Uint8Array {
  const files: Zippable = Object.fromEntries(csvFiles(made).map(([name, text]) => [name, strToU8(text)]))
  return zipSync(files, { level: 6, mtime: new Date(1980, 0, 1) })
}

/** Every schedule as one workbook. */
export const workbookOf = ({ design, answers }: Made): Uint8Array => xlsxOf(schedulesOf(design, answers))
