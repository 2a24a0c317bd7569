import AxeBuilder from '@axe-core/playwright'
import { expect, type Page, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

/** WCAG 2.1 A and AA by axe-core; contrast included. */
async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'])
    .analyze()
  return violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')} ${n.failureSummary}`))
}

for (const scheme of ['light', 'dark'] as const)
  test(`no accessibility faults on ${scheme} paper`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' })
    const table = new Table(page)
    await table.openSmallVan(smallVan())
    expect(await faults(page)).toEqual([])
    await table.part('F2').click()
    expect(await faults(page)).toEqual([])
    await table.pickRun('W5')
    await expect(table.card).toContainText('Protected')
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('n')
    await expect(table.findings.locator('.finding.shown')).toBeVisible()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('p')
    await expect(page.getByRole('dialog')).toBeVisible()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('?')
    await expect(page.getByRole('dialog')).toBeVisible()
    expect(await faults(page)).toEqual([])
  })

for (const scheme of ['light', 'dark'] as const)
  test(`no accessibility faults through lenses and while trying out on ${scheme} paper`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' })
    const table = new Table(page)
    await table.openSmallVan(smallVan())
    for (const lens of ['5', '6', '7', '8']) {
      await page.keyboard.press(lens)
      await expect(page.locator('.lens-key')).toBeVisible()
      expect(await faults(page)).toEqual([])
    }
    await page.keyboard.press('y')
    await expect(page.locator('.try-banner')).toBeVisible()
    expect(await faults(page)).toEqual([])
  })

for (const scheme of ['light', 'dark'] as const)
  test(`no accessibility faults in sheets and answers on ${scheme} paper`, async ({ page }) => {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' })
    const table = new Table(page)
    await table.openSmallVan(smallVan())
    await table.pickRun('W5')
    for (const why of await table.card.getByRole('button', { name: 'why?' }).all()) await why.click()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('n')
    await page.getByRole('button', { name: 'Accept with a reason' }).click()
    await page.getByLabel('Reason, in writing').fill('Looked at on site')
    expect(await faults(page)).toEqual([])
    await page.getByRole('button', { name: 'Accept', exact: true }).click()
    await expect(table.findings.locator('details.accepted')).toBeVisible()
    expect(await faults(page)).toEqual([])
    await page.getByRole('button', { name: 'Size it', exact: true }).click()
    await expect(page.locator('.copper')).toBeVisible()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('f')
    await page.getByRole('radio', { name: 'Conductors' }).check()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Designs' }).click()
    await page.getByRole('button', { name: 'Earlier states of this design' }).click()
    await expect(page.locator('.points li')).toHaveCount(1)
    expect(await faults(page)).toEqual([])
  })

test('the cautions stand on the first screen until they are read', async ({ page }) => {
  await page.goto('/')
  const cautions = page.getByRole('region', { name: 'Cautions before you begin' })
  await expect(cautions).toContainText('licensed')
  await cautions.getByRole('button', { name: 'I have read this' }).click()
  await expect(cautions).toHaveCount(0)
  await page.getByRole('contentinfo').getByRole('button', { name: 'Cautions' }).click()
  await expect(page.getByRole('dialog', { name: 'Cautions' })).toContainText('Local codes')
})
