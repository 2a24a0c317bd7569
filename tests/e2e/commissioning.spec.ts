import AxeBuilder from '@axe-core/playwright'
import { expect, type Page, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

const reading = (page: Page, name: string) => page.getByRole('region', { name, exact: true })
const title = (page: Page) => page.getByRole('heading', { level: 1, includeHidden: false }).last()

/** The page of the stage with the network gone: everything comes from what the browser has kept. */
async function offlineAtTesting(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
  })
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state ?? 'none'))
    .toBe('activated')
  await page.context().setOffline(true)
  await page.getByRole('button', { name: 'Commission', exact: true }).click()
  await page.reload()
  await expect(page.getByRole('navigation', { name: 'Steps in their order' })).toBeVisible()
}

test('measured, failed, retested, signed: without the network, and nothing of it is lost', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await offlineAtTesting(page)
  const steps = page.getByRole('navigation', { name: 'Steps in their order' })
  const progress = page.getByRole('status').filter({ hasText: 'readings passed' })
  await expect(progress).toContainText(/^0 \/ \d+ readings passed/)

  await test.step('nobody enters anything without a name', async () => {
    await page.getByRole('button', { name: 'As described', exact: true }).first().click()
    await expect(table.said).toContainText('Write who measures first')
    await page.getByLabel('Measured by').fill('J. Okafor')
    await page.getByRole('button', { name: 'As described', exact: true }).first().click()
    await expect(progress).toContainText(/^1 \//)
  })

  await test.step('arrows and page keys go through the steps; the cautions stand before the readings', async () => {
    await page.getByRole('button', { name: 'Next step' }).focus()
    await page.keyboard.press('ArrowRight')
    await expect(page.getByText(/^Step 2 of/)).toBeVisible()
    await page.keyboard.press('PageUp')
    await expect(page.getByText(/^Step 1 of/)).toBeVisible()
    await steps
      .getByRole('button', { name: /Battery under load/ })
      .first()
      .click()
    await expect(page.getByRole('list', { name: 'Cautions before this step' })).toContainText('short circuit')
  })

  await test.step('a load: a decimal comma is read, what fails is taken again and stays in sight', async () => {
    await steps.getByRole('button', { name: /Load:/ }).first().click()
    const current = reading(page, 'Current')
    const bounds = await current.locator('.test-expected strong').textContent()
    const [least, most] = bounds!.match(/[\d.]+/g)!.map(Number)
    const good = String(((least! + most!) / 2).toFixed(2)).replace('.', ',')
    await current.getByLabel('Current, measured').fill('many')
    await page.keyboard.press('Enter')
    await expect(current.getByRole('alert')).toContainText('Not a number')
    await current.getByLabel('Current, measured').fill(String(most! * 3))
    await page.keyboard.press('Enter')
    await expect(current.getByRole('list')).toContainText('Fail')
    await expect(steps.getByRole('button', { name: /Fail/ })).toHaveCount(1)
    // Taken again at once: the cursor stands in the same field.
    await page.keyboard.type(good)
    await current.getByLabel('Remark').fill('loose lug, crimped anew')
    await page.keyboard.press('Enter')
    const entries = current.getByRole('listitem')
    await expect(entries).toHaveCount(2)
    await expect(entries.first()).toContainText('Pass')
    await expect(entries.first()).toContainText('loose lug, crimped anew')
    await expect(entries.last()).toContainText('Fail')
    await page.getByRole('button', { name: /^Undo/ }).click()
    await expect(entries).toHaveCount(1)
    await page.getByRole('button', { name: /^Redo/ }).click()
    await expect(entries).toHaveCount(2)
  })

  await test.step('accessible, by axe-core', async () => {
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa'])
      .analyze()
    expect(violations.flatMap((v) => v.nodes.map((n) => `${v.id}: ${n.target.join(' ')}`))).toEqual([])
  })

  const step = await title(page).textContent()
  await test.step('signed, and what comes later stands apart', async () => {
    await page.getByRole('button', { name: 'Sign', exact: true }).click()
    await page.getByRole('textbox', { name: 'Name' }).fill('B. Stone')
    await page.getByRole('button', { name: 'Sign what stands here' }).click()
    await expect(page.getByRole('list', { name: 'Signatures given' })).toContainText('Signed by B. Stone')
    await steps.getByRole('button', { name: new RegExp(step!) }).click()
    await reading(page, 'Voltage at the load').getByLabel('Voltage at the load, measured').fill('13')
    await page.keyboard.press('Enter')
    await expect(reading(page, 'Voltage at the load')).toContainText('After the signature')
    await expect(reading(page, 'Current')).toContainText('Signed by B. Stone')
  })

  await test.step('kept over a reload, still without the network', async () => {
    await table.settled()
    await page.reload()
    await steps.getByRole('button', { name: new RegExp(step!) }).click()
    await expect(reading(page, 'Current').getByRole('listitem')).toHaveCount(2)
    await expect(page.getByLabel('Measured by')).toHaveValue('J. Okafor')
  })

  await test.step('the design changes: the entry says what was expected then, and counts no more', async () => {
    await page.getByRole('button', { name: 'Show on the drawing' }).click()
    await expect(table.card).toBeVisible()
    const field = table.card.getByLabel('Running current')
    await field.fill('29')
    await page.keyboard.press('Enter')
    await page.getByRole('button', { name: 'Commission', exact: true }).click()
    await steps.getByRole('button', { name: new RegExp(step!) }).click()
    await expect(reading(page, 'Current')).toContainText('Out of date, then expected')
    await expect(steps.getByRole('button', { name: new RegExp(step!) })).toContainText('Out of date')
  })
})

test('on a telephone the list opens over the step, and every target is large enough for a thumb', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  const table = new Table(page)
  await table.open('first-start')
  await page.goto('/#commissioning')
  await expect(page.getByText(/^Step 1 of/)).toBeVisible({ timeout: 30_000 })
  await page.getByRole('button', { name: 'Steps', exact: true }).click()
  await page
    .getByRole('navigation', { name: 'Steps in their order' })
    .getByRole('button', { name: /Low-battery alert/ })
    .click()
  await expect(title(page)).toContainText('Low-battery alert')
  const judged = reading(page, 'Set to warn at')
  await page.getByLabel('Measured by').fill('J. Okafor')
  await judged.getByRole('button', { name: 'I judge it good' }).click()
  await expect(judged.getByRole('alert')).toContainText('in words')
  await judged
    .getByLabel('Why it is good, or not, in words')
    .fill('Warns at 12.8 V, well before the batteries stop')
  await judged.getByRole('button', { name: 'I judge it good' }).click()
  await expect(judged.getByRole('list')).toContainText('judged good')
  for (const target of await page
    .locator('.commissioning button:visible, .commissioning input:visible')
    .all())
    expect((await target.boundingBox())!.height).toBeGreaterThanOrEqual(44)
  const width = await page.evaluate(
    () =>
      document.querySelector('.test-hand')!.scrollWidth - document.querySelector('.test-hand')!.clientWidth,
  )
  expect(width).toBeLessThanOrEqual(0)
})

test('what is typed and not entered yet waits while one looks at the drawing, and is gone once entered', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.getByRole('button', { name: 'Commission', exact: true }).click()
  await page.getByLabel('Measured by').fill('J. Okafor')
  const remark = page.locator('.test-entry').first().getByLabel('Remark')
  await remark.fill('behind the left locker')
  await page.getByRole('button', { name: 'Drawing', exact: true }).click()
  await expect(page.locator('main.page')).toHaveCount(0)
  await page.getByRole('button', { name: 'Commission', exact: true }).click()
  await expect(remark).toHaveValue('behind the left locker')
  await page.getByRole('button', { name: 'As described', exact: true }).first().click()
  await expect(page.getByText('behind the left locker')).toBeVisible()
  await expect(remark).toHaveValue('')
})
