import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('a first start shows the single-line view; another choice is remembered', async ({ page }) => {
  const table = new Table(page)
  await table.open('first-start')
  await expect(page.getByRole('radio', { name: 'Single-line' })).toBeChecked()
  await page.keyboard.press('2')
  await page.reload()
  await expect(page.getByRole('radio', { name: 'Both poles' })).toBeChecked()
})

test('the whole drawing is in sight at the start, with its lines; designations can be read', async ({
  page,
}) => {
  const table = new Table(page)
  await table.open()
  await table.settled()
  await page.waitForTimeout(500)
  const sheet = (await page.locator('[data-canvas]').boundingBox())!
  for (const line of await page.locator('.conductors .run .line').all()) {
    const box = await line.boundingBox()
    if (!box) continue
    expect(box.x).toBeGreaterThanOrEqual(sheet.x)
    expect(box.x + box.width).toBeLessThanOrEqual(sheet.x + sheet.width)
  }
  // Words of conductors would be a smudge here: none is shown, and what is shown has at least 5 px capitals.
  const heights = await page
    .locator('.label text')
    .evaluateAll((all) => all.map((t) => t.getBoundingClientRect().height))
  expect(heights.length).toBeGreaterThan(30)
  expect(Math.min(...heights)).toBeGreaterThan(7)
  await expect(page.locator('.label text').filter({ hasText: 'mm²' })).toHaveCount(0)
})

test('one lens at a time, by switch and by key, each with its key on the sheet', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const key = (name: string) => page.getByRole('region', { name: `Key: ${name}` })
  await page.getByRole('button', { name: 'Lens: Worst-case current' }).click()
  await expect(key('Worst-case current')).toContainText('up to 20 A')
  await expect(page.locator('.tag')).toContainText(['3 A'])
  await page.locator('.sheet').hover()
  await page.keyboard.press('7')
  await expect(key('Worst-case current')).toHaveCount(0)
  await expect(key('Meter truth')).toContainText('Bypasses')
  await page.keyboard.press('8')
  await expect(page.locator(`.tag.thin, .tag.strong`)).not.toHaveCount(0)
  await page.getByRole('button', { name: 'Take the lens off' }).click()
  await expect(page.locator('.tag')).toHaveCount(0)
})

test('the protection lens: pointing at a device, selecting a conductor, and a run without protection', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.keyboard.press('6')
  const look = (n: string) => table.run(n).locator('.look')
  await table.part('F2').hover({ position: { x: 12, y: 12 } })
  await expect(look('W5')).toHaveClass(/accent/)
  await expect(look('W2')).not.toHaveClass(/accent/)
  await page.mouse.move(640, 690)
  await expect(look('W5')).not.toHaveClass(/accent/)
  await table.pickRun('W5')
  await expect(table.part('F2')).toHaveClass(/guarding/)
  await expect(table.part('F1')).not.toHaveClass(/guarding/)

  // A fuse taken out of the way leaves the rest without any.
  await page.keyboard.press('Escape')
  await table.join(['G1', '+'], ['E1', '+'])
  await expect(page.locator('.run .look.danger').first()).toBeVisible()
  await expect(page.locator('.tag').filter({ hasText: 'no protection' }).first()).toBeVisible()
})
