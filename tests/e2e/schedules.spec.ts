import { readFile } from 'node:fs/promises'
import { strFromU8, unzipSync } from 'fflate'
import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test.beforeEach(async ({ page }) => {
  await new Table(page).openSmallVan(smallVan())
  await page.getByRole('navigation', { name: 'Stages of the job' }).getByText('Schedules').click()
})

test('a schedule is sorted, filtered, walked by keys, and leads to the drawing', async ({ page }) => {
  const table = new Table(page)
  const rows = page.locator('tr[data-row]')
  await expect(rows).toHaveCount(8)
  await page.getByRole('button', { name: 'Length (m)', exact: true }).click()
  await expect(page.getByRole('columnheader', { name: 'Length (m)', exact: true })).toHaveAttribute(
    'aria-sort',
    'ascending',
  )
  await expect(rows.first().locator('td').first()).toHaveText('W1')
  await page.getByRole('button', { name: 'Length (m)', exact: true }).click()
  await expect(rows.first().locator('td').first()).toHaveText('W5')

  await page.getByRole('searchbox').fill('reading lamp')
  await expect(rows).toHaveCount(2)
  await rows.first().click()
  await expect(page.getByRole('complementary', { name: 'W3 on the drawing' })).toBeVisible()
  await page.keyboard.press('ArrowDown')
  await expect(page.getByRole('complementary', { name: 'W4 on the drawing' })).toBeVisible()
  await page.keyboard.press('Enter')
  await expect(page).not.toHaveURL(/#/)
  await expect(table.card).toContainText('W4')
  await page.goBack()
  await expect(page.getByRole('searchbox')).toHaveValue('reading lamp')
})

test('it follows the drawing: a length that is changed there is changed here', async ({ page }) => {
  const table = new Table(page)
  await page.getByRole('button', { name: 'Drawing', exact: true }).click()
  await table.pickRun('W5')
  await table.card.getByLabel('Length').fill('6')
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'Schedules' }).click()
  const row = page.locator('tr[data-row]', { has: page.getByRole('cell', { name: 'W5', exact: true }) })
  await expect(row).toContainText('6.00')
  await expect(row).toContainText('6.20')
  await page.getByLabel('Added at each end').fill('0.25')
  await page.keyboard.press('Enter')
  await expect(row).toContainText('6.50')
})

test('article numbers and prices are typed in, kept, and offered to the next design', async ({ page }) => {
  await page.getByRole('button', { name: 'Parts list' }).click()
  await page.getByRole('button', { name: 'Articles and prices' }).click()
  await page.getByLabel('Own article number of Battery').fill('=B-200')
  await page.keyboard.press('Enter')
  await page.getByLabel('Price of one Battery').fill('899,50')
  await page.keyboard.press('Enter')
  await page.getByRole('button', { name: 'Done with articles' }).click()
  await expect(page.locator('tr[data-row]', { hasText: 'Battery' }).first()).toContainText('899.50')

  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'CSV' }).click()
  const csv = await readFile(await (await download).path(), 'utf8')
  // A spreadsheet would take it for a formula otherwise (OWASP, CSV injection).
  expect(csv).toContain("'=B-200")

  const workbook = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Workbook' }).click()
  const parts = unzipSync(await readFile(await (await workbook).path()))
  expect(Object.keys(parts).filter((p) => p.startsWith('xl/worksheets/')).length).toBe(10)
  expect(Object.values(parts).some((p) => strFromU8(p).includes('<f>'))).toBe(false)

  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+z')
  await expect(page.locator('tr[data-row]', { hasText: 'Battery' }).first()).not.toContainText('899.50')
  await page.getByRole('button', { name: /^Fill 1 from earlier/ }).click()
  await expect(page.locator('tr[data-row]', { hasText: 'Battery' }).first()).toContainText('899.50')
})
