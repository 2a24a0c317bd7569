import AxeBuilder from '@axe-core/playwright'
import { expect, type Page, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

const stage = (page: Page, name: string) =>
  page.getByRole('navigation', { name: 'Stages of the job' }).getByRole('button', { name })

async function issue(page: Page, reason: string): Promise<void> {
  const form = page.getByRole('form', { name: 'Issue a revision' })
  await form.getByLabel('Issued by').fill('R. Hale')
  await form.getByLabel('Reason, printed').fill(reason)
  await form.getByRole('button', { name: /^Issue revision/ }).click()
}

test('a revision is issued, changed against, compared on the drawing, and taken back', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const standing = page.locator('.stands')
  const changes = page.getByRole('region', { name: 'What changed' })
  const drawings = page.getByRole('region', { name: 'Drawings' })

  await test.step('issuing asks for a name and a reason, and freezes the state', async () => {
    await stage(page, 'Revisions').click()
    await expect(standing).toContainText('Not issued')
    await expect(page.getByRole('button', { name: 'Issue revision A' })).toBeDisabled()
    await issue(page, 'For the workshop')
    await expect(standing).toHaveText('AIssued')
    await expect(page.getByRole('form')).toContainText('Nothing has changed since the last one')
    await expect(page.getByRole('banner')).toContainText('rev. A')
  })

  await test.step('the first change is told at once, wherever the design is looked at', async () => {
    await stage(page, 'Drawing').click()
    await table.part('M1').click()
    await table.card.getByLabel('Name', { exact: true }).fill('Shower pump')
    await page.keyboard.press('Enter')
    await expect(page.getByRole('banner')).toContainText('after rev. A')
    await page.keyboard.press('Escape')
    await page.keyboard.press('Escape')
    await expect(table.card.getByLabel('Revision', { exact: true })).toBeDisabled()
    const size = table.card.getByLabel('Size', { exact: true })
    // The sheet may still glide back to where it was.
    await expect(async () => {
      await table.pickRun('W5')
      await expect(size).toBeVisible({ timeout: 2000 })
    }).toPass()
    await size.selectOption('6mm2')
    await table.settled()
  })

  await test.step('the list says what changed, and a row is shown on the drawing', async () => {
    await stage(page, 'Revisions').click()
    await expect(standing).toContainText('Changed since A, not issued')
    await expect(changes).toContainText('Name: “Water pump” → “Shower pump”')
    await expect(changes).toContainText('Size: 2.5 mm² → 6 mm²')
    await expect(drawings.locator('.sign.changed')).toHaveCount(2)
    const row = changes.getByRole('button', { name: /W5/ }).first()
    await row.click()
    await expect(row).toHaveAttribute('aria-pressed', 'true')
    await expect(drawings.locator('.sign.picked')).toHaveCount(1)
  })

  await test.step('side by side, both drawings are moved in step', async () => {
    await page.getByRole('radio', { name: 'Side by side' }).click()
    const views = drawings.getByRole('img')
    await expect(views).toHaveCount(2)
    const frames = () => views.evaluateAll((all) => all.map((svg) => svg.getAttribute('viewBox')))
    const before = await frames()
    await views.first().focus()
    await page.keyboard.press('ArrowRight')
    await page.keyboard.press('+')
    const after = await frames()
    expect(after[0]).not.toBe(before[0])
    expect(after[1]).toBe(after[0])
  })

  await test.step('an issued state is looked at, and nothing of it can be changed', async () => {
    await page.getByRole('button', { name: 'Look at it' }).click()
    await expect(page.getByText('as it was issued. It can be looked at, not changed.')).toBeVisible()
    await expect(drawings.locator('svg text', { hasText: 'Water pump' })).toBeVisible()
    await page.getByRole('button', { name: 'Back to comparing' }).click()
  })

  await test.step('it is taken back in one step, and undone in one', async () => {
    await page.getByRole('button', { name: 'Take it back' }).click()
    await expect(standing).toHaveText('AIssued')
    await page.getByRole('button', { name: /^Undo: Take back/ }).click()
    await expect(standing).toContainText('Changed since A')
  })

  await test.step('revisions are there after the page is loaded again', async () => {
    await issue(page, 'After the first fitting')
    await expect(standing).toHaveText('BIssued')
    await expect(page.getByText('Kept in this browser', { exact: true })).toBeVisible()
    await page.reload()
    await expect(page.locator('.issued li')).toHaveCount(2)
    await expect(changes).toContainText('Shower pump')
  })
})

test('a file whose revision was changed by hand is told of, and the revision is not used', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await stage(page, 'Revisions').click()
  await issue(page, 'For the workshop')
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  ])
  const chunks: Buffer[] = []
  for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer)
  const file = JSON.parse(Buffer.concat(chunks).toString('utf8'))
  file.revisions[0].reason = 'Approved by everybody'
  await table.dropFile('forged.json', JSON.stringify({ ...file, id: 'forged' }))
  const dialog = page.getByRole('dialog')
  await expect(dialog).toContainText('revision A as it was issued')
  await dialog.getByRole('button', { name: /open/i }).last().click()
  await stage(page, 'Revisions').click()
  await expect(page.locator('.issued')).toContainText('What is kept of it is not what was issued')
  await expect(page.getByRole('button', { name: 'Look at it' })).toHaveCount(0)
})

for (const scheme of ['light', 'dark'] as const)
  test(`no accessibility faults on the page of revisions on ${scheme} paper`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' })
    const faults = async () => {
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'])
        .analyze()
      return violations.flatMap((v) =>
        v.nodes.map((n) => `${v.id}: ${n.target.join(' ')} ${n.failureSummary}`),
      )
    }
    const table = new Table(page)
    await table.openSmallVan(smallVan())
    await stage(page, 'Revisions').click()
    await expect(page.locator('.stands')).toBeVisible()
    expect(await faults()).toEqual([])
    await issue(page, 'For the workshop')
    await stage(page, 'Drawing').click()
    await table.part('M1').click()
    await table.card.getByLabel('Name', { exact: true }).fill('Shower pump')
    await page.keyboard.press('Enter')
    await stage(page, 'Revisions').click()
    await page
      .getByRole('region', { name: 'What changed' })
      .getByRole('button', { name: /M1/ })
      .first()
      .click()
    expect(await faults()).toEqual([])
  })
