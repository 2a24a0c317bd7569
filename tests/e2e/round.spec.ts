import { expect, test } from 'playwright/test'

test('a look round is offered once, goes from stop to stop, and leaves the design as it was', async ({
  page,
}) => {
  await page.goto('/')
  await expect(page.getByRole('status', { name: 'Checks' })).not.toHaveText('Checking…')
  await page.getByRole('button', { name: 'I have read this' }).click()
  await page.getByRole('button', { name: 'Show me round' }).click()
  const stop = page.getByRole('dialog')
  await expect(stop).toContainText('1 of 9')
  await page.keyboard.press('Enter')
  await expect(stop).toContainText('What a conductor can carry')
  await expect(page.getByRole('region', { name: 'Card' })).toContainText('W15')
  await stop.getByRole('button', { name: 'Next' }).click()
  await expect(stop).toContainText('What the checks found')
  await stop.getByRole('button', { name: 'Back' }).click()
  await expect(stop).toContainText('What a conductor can carry')
  for (let i = 0; i < 7; i++) await stop.getByRole('button', { name: 'Next' }).click()
  await expect(stop).toBeInViewport({ ratio: 1 })
  await stop.getByRole('button', { name: 'Begin' }).click()
  await expect(stop).toHaveCount(0)
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeVisible()

  await page.reload()
  await expect(page.getByRole('status', { name: 'Checks' })).not.toHaveText('Checking…')
  await expect(page.getByRole('button', { name: 'Show me round' })).toHaveCount(0)
  await page.keyboard.press('?')
  await page.getByRole('button', { name: 'Show me round' }).click()
  await expect(stop).toContainText('1 of 9')
  await page.keyboard.press('Escape')
  await expect(stop).toHaveCount(0)
})
