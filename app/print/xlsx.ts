import { strToU8, type Zippable, zipSync } from 'fflate'
import { type Schedule, workbookParts } from '../../engine'

/** Schedules as one XLSX file, a sheet for each. The same schedules give the same bytes, in any time zone. */
export function xlsxOf(schedules: readonly Schedule[]): Uint8Array {
  const files: Zippable = {}
  for (const { path, text } of workbookParts(schedules)) files[path] = strToU8(text)
  // The earliest day that a ZIP file can hold, in local time, as the file stores it.
  return zipSync(files, { level: 6, mtime: new Date(1980, 0, 1) })
}
