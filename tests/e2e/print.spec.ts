import { readFile } from 'node:fs/promises'
import { PDFDocument } from '@cantoo/pdf-lib'
import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('a pack is looked at page by page and taken away as PDF; the PDF opens as the design', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.getByRole('button', { name: 'Packs on paper' }).click()
  await page.getByRole('group', { name: 'Pack for the' }).getByText('Designer').click()
  const preview = page.getByRole('region', { name: 'Preview' })
  await expect(preview.locator('.paper-sheet:not(.old) svg title')).toHaveText('Contents', {
    timeout: 60_000,
  })
  await page.keyboard.press('PageDown')
  await expect(preview.getByRole('status')).toContainText('Page 2 / ')
  await expect(preview.locator('svg title')).not.toHaveText('Contents')

  const download = page.waitForEvent('download', { timeout: 60_000 })
  await page.getByRole('button', { name: 'PDF of the pack' }).click()
  const file = await download
  expect(file.suggestedFilename()).toBe('small-van-designer.pdf')
  const path = await file.path()
  const pdf = await PDFDocument.load(await readFile(path), { updateMetadata: false })
  expect(pdf.getTitle()).toBe('Small van: designer’s pack')
  // A3 landscape, in points of 1/72 inch.
  const { width, height } = pdf.getPage(1).getSize()
  expect([width, height].map((points) => Math.round((points / 72) * 25.4))).toEqual([420, 297])
  await expect(preview.getByRole('status')).toContainText(`/ ${pdf.getPageCount()}`)

  await page.getByRole('button', { name: 'Drawing' }).click()
  const chooser = page.waitForEvent('filechooser')
  await page.evaluate(() => Object.assign(window, { showOpenFilePicker: undefined }))
  await page.getByRole('button', { name: 'Open a file' }).click()
  await (await chooser).setFiles({
    name: 'pack.pdf',
    mimeType: 'application/pdf',
    buffer: await readFile(path),
  })
  await expect(table.said).toContainText('The design inside pack.pdf is open.')
})

test('cancel ends the work; contents are chosen and kept', async ({ page }) => {
  const table = new Table(page)
  await table.open()
  await page.getByRole('button', { name: 'Packs on paper' }).click()
  await page.getByRole('button', { name: 'Cancel' }).click()
  await expect(page.getByText('Stopped. Nothing is being made.')).toBeVisible()
  await page.getByRole('button', { name: 'Make the pack' }).click()
  await expect(page.locator('.paper-sheet:not(.old) svg')).toBeVisible({ timeout: 60_000 })

  const inside = page.getByRole('list', { name: 'In the pack', exact: true })
  const labels = inside.getByLabel('Labels', { exact: true })
  await labels.click()
  await expect(labels).toHaveCount(0)
  const first = () => inside.getByRole('listitem').first()
  await inside.getByRole('button', { name: 'Conductors: further up' }).click()
  await expect(inside.getByLabel('Conductors', { exact: true })).toBeFocused()
  await page.reload()
  await expect(first()).toBeVisible()
  await expect(labels).toHaveCount(0)
  await page.getByRole('button', { name: 'As usual' }).click()
  await expect(labels).toBeVisible()
  await expect(first()).toContainText('Schematic')
})
