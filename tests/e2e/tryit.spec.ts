import { expect, type Page, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

const panel = (page: Page) => page.getByRole('complementary', { name: 'Trying it out' })

test('a design is tried out by hand: touches flip things, readings follow, the design stays', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.getByRole('button', { name: 'Try it' }).click()
  await expect(page.getByRole('status', { name: 'Trying it out' })).toContainText('The design stays as it is')
  const shunt = panel(page).getByRole('row', { name: /^B1/ })
  // Lamp 3 A and pump 8 A, at a voltage near 12 V.
  await expect(shunt).toContainText(/11(\.\d+)? A/)
  await expect(page.locator('.running').first()).toBeAttached()

  await test.step('a touch on the lamp turns it off', async () => {
    await table.part('E1').click({ position: { x: 30, y: 20 } })
    await expect(table.said).toContainText('E1: off')
    await expect(shunt).toContainText(/8(\.\d+)? A/)
    await expect(table.run('W3').locator('.running')).toHaveCount(0)
  })
  await test.step('a fuse way comes out by its row', async () => {
    await panel(page).getByText('Fuses', { exact: true }).click()
    await panel(page)
      .getByRole('switch', { name: /F2 Loads · way 2/ })
      .click()
    await expect(shunt).toContainText('0 A')
    await expect(page.locator('.tag').filter({ hasText: '2 out' })).toBeVisible()
  })
  await test.step('nothing can be drawn meanwhile', async () => {
    await page.locator('.sheet').hover({ position: { x: 300, y: 500 } })
    await page.keyboard.press('Delete')
    await page.keyboard.press('a')
    await expect(table.part('E1')).toBeVisible()
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible()
  })
  await test.step('back to the drawing, and again with the switches as they were', async () => {
    await page.keyboard.press('Escape')
    await expect(panel(page)).toHaveCount(0)
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible()
    await page.keyboard.press('y')
    await expect(panel(page).getByRole('row', { name: /^B1/ })).toContainText('0 A')
    await panel(page).getByRole('button', { name: 'As usual' }).click()
    await expect(panel(page).getByRole('row', { name: /^B1/ })).toContainText(/11(\.\d+)? A/)
  })
})

test('the demo is tried out by keyboard, in all views, with sun', async ({ page }) => {
  const table = new Table(page)
  await table.open()
  await table.settled()
  await page.keyboard.press('y')
  const sun = panel(page).getByLabel('Sun on all arrays')
  await sun.focus()
  await page.keyboard.press('End')
  await expect(page.locator('dl', { hasText: 'Sources give' })).not.toContainText('Sources give0 W')
  await expect(page.locator('.tag').first()).toBeVisible()
  const isolator = panel(page).getByRole('switch', { name: /Q1/ })
  await isolator.focus()
  await page.keyboard.press('Space')
  await expect(isolator).not.toBeChecked()
  for (const view of ['Single-line', 'Data links', 'Both poles']) {
    await page.getByRole('radio', { name: view }).click()
    await table.settled()
    await expect(panel(page)).toBeVisible()
  }
})

test('where nothing may move, arrows show the way', async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    reducedMotion: 'reduce',
    viewport: { width: 1366, height: 768 },
    ...(baseURL ? { baseURL } : {}),
  })
  const page = await context.newPage()
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.keyboard.press('y')
  await expect(table.run('W3').locator('.arrows')).toBeVisible()
  await expect(table.run('W3').locator('.running')).toBeHidden()
  await context.close()
})
