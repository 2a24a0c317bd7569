import { readFile } from 'node:fs/promises'
import { PDFDocument } from '@cantoo/pdf-lib'
import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('the schematic is exported as a PDF', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.getByRole('button', { name: 'Schematic on paper' }).click()
  const download = page.waitForEvent('download', { timeout: 60_000 })
  await page.getByRole('button', { name: 'Make the PDF' }).click()
  const file = await download
  expect(file.suggestedFilename()).toBe('small-van.pdf')
  const pdf = await PDFDocument.load(await readFile(await file.path()))
  expect(pdf.getTitle()).toBe('Small van')
  // A3 landscape, in points of 1/72 inch.
  const { width, height } = pdf.getPage(0).getSize()
  expect(Math.round((width / 72) * 25.4)).toBe(420)
  expect(Math.round((height / 72) * 25.4)).toBe(297)
})
