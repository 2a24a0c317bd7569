import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('a finding is accepted with a reason, counted apart, kept, undone and opened again', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan().replace('"lengthM": 4,', '"lengthM": null,'))
  await table.settled()
  const open = table.findings.locator(':scope > ol > .finding')
  const first = open.first()
  const title = await first.locator('.what b').textContent()
  const count = await open.count()
  await first.locator('.what').click()

  await test.step('nothing happens without a reason', async () => {
    await first.getByRole('button', { name: 'Accept with a reason' }).click()
    const form = first.getByRole('group', { name: 'Accept this finding' })
    await expect(form.getByRole('button', { name: 'Accept' })).toBeDisabled()
    await form.getByLabel('Reason, in writing').fill('Measured on site at handover')
    await form.getByLabel('By').fill('R. Hale')
    await form.getByRole('button', { name: 'Accept' }).click()
  })

  const group = table.findings.locator('details.accepted')
  await test.step('it stands in a group of its own, and is counted apart', async () => {
    await expect(group.locator('summary')).toHaveText('Accepted with a reason 1')
    await expect(open).toHaveCount(count - 1)
    await expect(table.checks).toContainText('1 accepted')
    await expect(group).toHaveAttribute('open', '')
    await expect(group).toContainText(title!)
    await expect(group).toContainText(/Accepted by R\. Hale, \d{4}-\d\d-\d\d: Measured on site at handover/)
  })

  await test.step('undo and redo walk it, and it is there after the page is loaded again', async () => {
    await page.getByRole('button', { name: /^Undo: Accept/ }).click()
    await expect(open).toHaveCount(count)
    await page.keyboard.press('Control+y')
    await expect(group).toBeVisible()
    await expect(page.getByText('Kept in this browser', { exact: true })).toBeVisible()
    await page.reload()
    await expect(table.checks).toContainText('1 accepted')
  })

  await test.step('it is opened again', async () => {
    await group.locator('summary').click()
    await group.locator('.what').first().click()
    await group.getByRole('button', { name: 'Accept it no longer' }).click()
    await expect(group).toHaveCount(0)
    await expect(table.checks).not.toContainText('accepted')
  })
})
