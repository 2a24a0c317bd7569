import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parse } from 'csv-parse/sync'
import readXlsx from 'read-excel-file/node'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { pack } from '../../../app/cli/pack'
import {
  analyse,
  cellText,
  headed,
  isNotKnown,
  labelTable,
  readDesign,
  schedulesOf,
} from '../../../engine/index'

const folder = mkdtempSync(join(tmpdir(), 'tables-'))
afterAll(() => rmSync(folder, { recursive: true }))

const file = new URL('../../../public/demos/veterinary-van.json', import.meta.url).pathname
const { design } = readDesign(readFileSync(file, 'utf8'))
if (!design) throw new Error('the demo was not read')
const schedules = schedulesOf(design, analyse(design).answers)

beforeAll(async () => {
  const args = [file, '--out', folder, '--for', 'designer', '--contents', 'fuses', '--csv', '--xlsx']
  expect(await pack(args, { print: () => {}, complain: () => {} })).toBe(0)
}, 120_000)

/** Read back by csv-parse and read-excel-file: libraries that know nothing of this project. */
describe('tables from the command line', () => {
  test('are every schedule and the labels, and the workbook', () =>
    expect(readdirSync(folder).sort()).toEqual(
      [
        ...['designer.pdf', 'schedules.xlsx', 'labels.csv'],
        ...schedules.map((s) => `schedule-${s.key}.csv`),
      ].sort(),
    ))

  test.each([...schedules, labelTable(design)].map((s) => [s.key, s] as const))(
    '%s as CSV: heads and cells',
    (key, schedule) => {
      const name = key === 'labels' ? 'labels.csv' : `schedule-${key}.csv`
      const [head, ...rows] = parse(readFileSync(join(folder, name)), { bom: true }) as string[][]
      expect(head!.slice(0, schedule.columns.length)).toEqual(schedule.columns.map(headed))
      expect(rows.length).toBe(schedule.rows.length)
      schedule.rows.forEach((row, i) => {
        schedule.columns.forEach((column, k) => {
          const cell = row.cells[column.key]!
          const shown = isNotKnown(cell) ? '–' : String(cell)
          // Text that a spreadsheet would take for a formula has an apostrophe before it.
          expect(rows[i]![k]!.replace(/^'(?=[=+\-@\t\r\n])/, ''), `${row.name} ${column.title}`).toBe(shown)
        })
      })
    },
  )

  test('the workbook has a page for each, cell by cell', async () => {
    const pages = await readXlsx(readFileSync(join(folder, 'schedules.xlsx')))
    for (const schedule of schedules) {
      const page = pages.find((p) => p.sheet === schedule.title)
      const [head, ...rows] = page!.data
      expect(head!.slice(0, schedule.columns.length)).toEqual(schedule.columns.map(headed))
      schedule.rows.forEach((row, i) => {
        schedule.columns.forEach((column, k) => {
          const cell = row.cells[column.key]!
          const shown = typeof cell === 'number' ? cell : cellText(cell, column)
          const found = rows[i]?.[k] ?? ''
          expect(found, `${row.name} ${column.title}`).toBe(shown)
        })
      })
    }
  })
})
