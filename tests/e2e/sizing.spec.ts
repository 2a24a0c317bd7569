import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

/** The pump's feed is far too thick for its 8 A behind 15 A over 4 m. */
const thick = () => {
  const design = JSON.parse(smallVan())
  for (const c of design.conductors) if (['W5', 'W6'].includes(c.number)) c.size = '16mm2'
  return JSON.stringify(design)
}

test('sizes are previewed with reasons, taken as one step, and locked ones stay', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(thick())
  const sheet = page.getByRole('dialog', { name: 'Size it' })
  const w5 = () => sheet.locator('.choices li').filter({ hasText: /^W5/ })

  await test.step('the preview says what, why, and how much copper', async () => {
    await page.getByRole('button', { name: 'Size it', exact: true }).click()
    await expect(w5()).toContainText(/W5.*: .* instead of 16 mm²/)
    await expect(w5().locator('span')).not.toBeEmpty()
    await expect(sheet.getByText(/of copper, .* less than now/)).toBeVisible()
    await sheet.getByRole('button', { name: 'Leave it' }).click()
    await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible()
  })

  await test.step('a locked size is left', async () => {
    await table.pickRun('W5')
    await table.card.getByRole('button', { name: 'Locked' }).click()
    await page.keyboard.press('Escape')
    await page.keyboard.press('Escape')
    await page.keyboard.press('s')
    await expect(sheet.getByText(/left as they are/)).toBeVisible()
    await sheet.getByText(/left as they are/).click()
    await expect(sheet).toContainText(/W5 .*left as it is\. The size is locked\./)
  })

  await test.step('taken, it is one step; undo goes back by one', async () => {
    await sheet.getByRole('button', { name: /^Take/ }).click()
    await expect(sheet).toHaveCount(0)
    await table.settled()
    await expect(table.checks).toContainText('0 dangers')
    await table.pickRun('W5')
    await expect(table.card.getByLabel('Size', { exact: true })).toHaveValue('16mm2')
    await table.pickRun('W6')
    await expect(table.card.getByLabel('Size', { exact: true })).not.toHaveValue('16mm2')
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: /^Undo: Size it/ }).click()
    await table.pickRun('W6')
    await expect(table.card.getByLabel('Size', { exact: true })).toHaveValue('16mm2')
  })

  await test.step('the state before it is kept and can be gone back to, as one step', async () => {
    await page.keyboard.press('Control+y')
    await page.getByRole('button', { name: 'Designs' }).click()
    await page.getByRole('button', { name: 'Earlier states of this design' }).click()
    const earlier = page.getByRole('dialog', { name: 'Earlier states' })
    await expect(earlier.locator('li')).toHaveCount(2)
    await expect(earlier.locator('li').last()).toContainText('On opening')
    await earlier.getByRole('button', { name: /^Go back to "Before Size it"/ }).click()
    await expect(page.getByRole('button', { name: 'Undo: Go back to "Before Size it"' })).toBeVisible()
    await table.pickRun('W6')
    await expect(table.card.getByLabel('Size', { exact: true })).toHaveValue('16mm2')
  })
})

test('where no size will do, the reason is shown with its place, and the rest can be taken', async ({
  page,
}) => {
  const table = new Table(page)
  const design = JSON.parse(smallVan())
  for (const c of design.conductors) if (['W5', 'W6'].includes(c.number)) c.lengthM = 900
  await table.openSmallVan(JSON.stringify(design))
  await page.getByRole('button', { name: 'Size it', exact: true }).click()
  const sheet = page.getByRole('dialog', { name: 'Size it' })
  await expect(sheet).toContainText(/What cannot be chosen, and why/)
  await expect(sheet).toContainText(/No standard size holds .* Shorten the run, or raise the voltage/)
  await expect(sheet).toContainText(/What can be chosen: \d+ changes?/)
  await expect(sheet.locator('.choices li').filter({ hasText: /^W[56]:/ })).toHaveCount(0)
  await sheet.getByRole('button', { name: /^Take/ }).click()
  await expect(sheet).toHaveCount(0)
  await expect(page.getByRole('button', { name: /^Undo: Size it/ })).toBeVisible()
  await page.getByRole('button', { name: 'Size it', exact: true }).click()
  await sheet.getByRole('button', { name: /^Show/ }).first().click()
  await expect(sheet).toHaveCount(0)
  await expect(table.part('M1')).toHaveClass(/selected/)
})
