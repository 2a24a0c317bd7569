import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PDFDocument } from '@cantoo/pdf-lib'
import { afterAll, describe, expect, it } from 'vitest'
import { pack } from '../../../app/cli/pack'
import { analyse, labelSheets, readDesign, scheduleSheets, schedulesOf } from '../../../engine/index'
import { readCsv } from '../../engine/sheets/schedules/readcsv'
import { readZip } from '../print/readzip'

const folder = mkdtempSync(join(tmpdir(), 'workshop-'))
afterAll(() => rmSync(folder, { recursive: true }))

const file = new URL('../../../public/demos/camping-trailer.json', import.meta.url).pathname
const { design } = readDesign(readFileSync(file, 'utf8'))
if (!design) throw new Error('the demo was not read')
const { answers } = analyse(design)

async function packed(paper: string): Promise<string> {
  const out = join(folder, paper)
  const status = await pack([file, '--out', out, '--paper', paper], { print: () => {}, complain: () => {} })
  expect(status).toBe(0)
  return out
}

/** Page sizes of a PDF in whole millimetres: a point is 25.4/72 mm. */
async function sizes(path: string): Promise<string[]> {
  const pdf = await PDFDocument.load(readFileSync(path))
  return pdf.getPages().map((p) => {
    const { width, height } = p.getSize()
    return `${Math.round((width * 25.4) / 72)} × ${Math.round((height * 25.4) / 72)}`
  })
}

describe('files for the workshop', () => {
  it('hold every schedule as CSV, all of them as a workbook and as upright A4, and the labels', async () => {
    const out = await packed('A4')
    const names = readdirSync(out)
    const schedules = schedulesOf(design, answers)
    expect(names.sort()).toEqual(
      [
        ...['schematic.pdf', 'schedules.pdf', 'schedules.xlsx', 'labels.pdf', 'labels.csv'],
        ...schedules.map((s) => `schedule-${s.key}.csv`),
      ].sort(),
    )
    for (const s of schedules) {
      const text = readFileSync(join(out, `schedule-${s.key}.csv`), 'utf8')
      expect(readCsv(text.slice(1))).toHaveLength(s.rows.length + 1)
    }
    expect(readZip(readFileSync(join(out, 'schedules.xlsx'))).size).toBe(schedules.length + 6)
    const sheets = scheduleSheets(design, answers, { form: 'A4-portrait' })
    expect(await sizes(join(out, 'schedules.pdf'))).toEqual(sheets.map(() => '210 × 297'))
    expect(await sizes(join(out, 'labels.pdf'))).toEqual(labelSheets(design).map(() => '210 × 297'))
  }, 120_000)

  it('stand on A3 where the schematic does, with the labels on A4 all the same', async () => {
    const out = await packed('A3')
    const sheets = scheduleSheets(design, answers, { form: 'A3-landscape' })
    expect(await sizes(join(out, 'schedules.pdf'))).toEqual(sheets.map(() => '420 × 297'))
    expect(await sizes(join(out, 'labels.pdf'))).toEqual(labelSheets(design).map(() => '210 × 297'))
  }, 120_000)
})
