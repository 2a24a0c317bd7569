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

/** What is opened on each stage besides its first look, by the names of its buttons. */
const STAGES: readonly (readonly [stage: string, ready: string, buttons: readonly string[]])[] = [
  ['Schedules', 'main.schedules table', ['Parts list', 'Articles and prices']],
  ['Bench', '.bench-card', ['Cut', 'Built otherwise']],
  ['Commission', '.test-hand', ['As described', 'Sign']],
  ['Handover', '.book', ['Add a paragraph after "Everyday use"', 'As on a telephone']],
  ['Packs', '.paper-sheet:not(.old) svg', []],
  ['Revisions', 'main.revisions', []],
]

for (const scheme of ['light', 'dark'] as const)
  test(`no accessibility faults on any stage on ${scheme} paper`, async ({ page }) => {
    test.setTimeout(240_000)
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' })
    const table = new Table(page)
    await table.openSmallVan(smallVan())
    for (const [stage, ready, buttons] of STAGES)
      await test.step(stage, async () => {
        await page.getByRole('navigation', { name: 'Stages of the job' }).getByText(stage).click()
        await expect(page.locator(ready).first()).toBeVisible({ timeout: 60_000 })
        expect(await faults(page)).toEqual([])
        for (const name of buttons) {
          await page.locator('main').getByRole('button', { name, exact: true }).first().click()
          expect(await faults(page)).toEqual([])
        }
      })
    await test.step('Revisions, one issued, and changes since', async () => {
      await page.getByLabel('Issued by').fill('R. Alder')
      await page.getByLabel('Reason, printed').fill('For the workshop')
      await page.getByRole('button', { name: /^Issue revision/ }).click()
      await expect(page.getByText('Issued', { exact: true }).first()).toBeVisible()
      expect(await faults(page)).toEqual([])
    })
  })

test('a design without parts, and one whose words are very long, stand whole on every stage', async ({
  page,
}) => {
  test.setTimeout(240_000)
  const table = new Table(page)
  const long = 'Unbrokenverylongwordwithoutanyspace'.repeat(5)
  const van = JSON.parse(smallVan())
  const wordy = {
    ...van,
    settings: { ...van.settings, name: long, customer: long, vehicle: long, revision: long.slice(0, 40) },
    parts: van.parts.map((p: object) => ({ ...p, name: long, location: long })),
    conductors: van.conductors.map((c: { number: string }) => ({
      ...c,
      number: `${c.number}${long}`.slice(0, 40),
    })),
  }
  await table.openSmallVan(smallVan())
  for (const [name, design] of [
    ['wordy', wordy],
    ['empty', { ...van, id: 'empty', parts: [], conductors: [] }],
  ] as const) {
    await page.getByRole('navigation', { name: 'Stages of the job' }).getByText('Drawing').click()
    await table.dropFile(`${name}.json`, JSON.stringify(design))
    await expect(page.locator('.part')).toHaveCount(design.parts.length)
    for (const [stage] of STAGES)
      await test.step(`${name}: ${stage}`, async () => {
        await page.getByRole('navigation', { name: 'Stages of the job' }).getByText(stage).click()
        const main = page.locator('main.page:visible')
        await expect(main).not.toHaveText(/^(Working|Fetching)/)
        await expect(main).not.toBeEmpty()
        // Words may run out of what scrolls them, and out of nothing else.
        const cut = await main.evaluate((main) =>
          [...main.querySelectorAll('h1, h2, h3, dd, .way, .terminal, .where, li b, li button')]
            .filter((e) => e.getBoundingClientRect().width > 0 && e.scrollWidth > e.clientWidth + 1)
            .map((e) => `${e.tagName}.${e.className}: ${e.textContent?.slice(0, 60)}`),
        )
        expect(cut).toEqual([])
      })
  }
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
