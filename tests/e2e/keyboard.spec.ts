import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('the whole story by keyboard alone', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const { keyboard } = page

  await test.step('place a fridge by typing, and name it', async () => {
    await keyboard.press('p')
    await keyboard.type('fridge')
    await keyboard.press('Enter')
    await expect(table.part('E2')).toBeVisible()
    await expect(table.card.getByLabel('Name')).toBeFocused()
    await keyboard.type('Fridge')
    await keyboard.press('Enter')
    for (let i = 0; i < 12; i++) {
      await keyboard.press('Tab')
      if (await table.card.getByLabel('Running current').evaluate((e) => e === document.activeElement)) break
    }
    await keyboard.type('6')
    await keyboard.press('Enter')
    await keyboard.press('Escape')
  })

  await test.step('join it from the battery, without protection', async () => {
    await keyboard.press('f')
    await keyboard.type('G1')
    await keyboard.press('Enter')
    await expect(table.card.getByRole('heading', { level: 2 })).toContainText('G1')
    await keyboard.press('j')
    await keyboard.type('positive')
    await keyboard.press('Enter')
    await keyboard.type('E2 positive')
    await keyboard.press('Enter')
    await expect(table.said).toContainText('W9 and W10')
    // A fridge takes constant power: 6 A at 12 V is 7.2 A at 10 V, the lowest that the system runs at.
    await expect(table.card.getByTestId('forward')).toContainText('7.2 A')
    await expect(table.checks).toContainText(/[1-9] danger/)
  })

  await test.step('go to the finding', async () => {
    await keyboard.press('n')
    await expect(table.findings.locator('.finding.shown')).toContainText('W9')
  })

  await test.step('take it off and join it to a fuse way', async () => {
    await keyboard.press('f')
    await keyboard.type('W9')
    await keyboard.press('Enter')
    await keyboard.press('Delete')
    await expect(table.run('W9')).toHaveCount(0)
    await keyboard.press('f')
    await keyboard.type('F2')
    await keyboard.press('Enter')
    await keyboard.press('j')
    await keyboard.type('way 3')
    await keyboard.press('Enter')
    await keyboard.type('E2 positive')
    await keyboard.press('Enter')
    await expect(table.run('W9')).toHaveCount(1)
    await expect(table.checks).toContainText('0 dangers')
  })

  await test.step('nudge, turn, undo and see the keys', async () => {
    await keyboard.press('f')
    await keyboard.type('Fridge')
    await keyboard.press('Enter')
    await keyboard.press('ArrowRight')
    await keyboard.press('t')
    await expect(page.getByRole('button', { name: 'Undo: Turn part' })).toBeVisible()
    await keyboard.press('Control+z')
    await keyboard.press('?')
    await expect(page.getByRole('dialog', { name: 'Keys and hands' })).toBeVisible()
    await keyboard.press('Escape')
  })
})

test('the view changes and keeps the selection', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.pickRun('W5')
  await page.keyboard.press('1')
  await expect(page.getByRole('radio', { name: 'Single-line' })).toBeChecked()
  await expect(table.run('W6')).toHaveCount(0)
  await expect(table.run('W5')).toHaveClass(/selected/)
  await page.keyboard.press('2')
  await expect(table.run('W6')).toHaveCount(1)
  await expect(table.run('W5')).toHaveClass(/selected/)
})

test('an end of a conductor is taken to another terminal by name', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.pickRun('W5')
  await table.card.getByRole('button', { name: 'Take the end at F2 way 2 elsewhere' }).click()
  await page.keyboard.type('F2 way 3')
  await page.keyboard.press('Enter')
  await expect(table.card).toContainText('F2 way 3')
  await expect(table.card.getByLabel('Length')).toHaveValue('4')
  await expect(page.getByRole('button', { name: 'Undo: Take W5 to F2 way 3' })).toBeVisible()
})

test('the wiring is walked along by keys, from part to conductor to part', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const { keyboard } = page
  await keyboard.press('f')
  await keyboard.type('F2')
  await keyboard.press('Enter')
  await keyboard.press('c')
  await expect(table.said).toContainText(/^W\d+, 1 of \d+ at F2/)
  await keyboard.press('c')
  await expect(table.said).toContainText(/^W\d+, 2 of \d+ at F2/)
  await keyboard.press('Shift+C')
  await expect(table.said).toContainText(/^W\d+, 1 of \d+ at F2/)
  const [number] = (await table.said.textContent())!.split(',')
  await expect(table.run(number!)).toHaveClass(/selected/)
  await keyboard.press('g')
  await expect(table.said).toContainText(`over ${number}.`)
  await keyboard.press('c')
  await expect(table.said).toContainText(/^W\d+, 1 of \d+ at (?!F2)/)
})

test('on every stage the keyboard goes from the rail straight into its page', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const rail = page.getByRole('navigation', { name: 'Stages of the job' })
  for (const stage of ['Schedules', 'Bench', 'Handover', 'Commission', 'Packs', 'Revisions']) {
    await rail.getByRole('button', { name: stage }).press('Enter')
    await expect(
      page.locator('main.page:visible').locator('button:visible, input:visible').first(),
    ).toBeVisible({
      timeout: 60_000,
    })
    await rail.getByRole('button').last().focus()
    await page.keyboard.press('Tab')
    await expect(page.locator('main.page:visible').locator(':focus')).toHaveCount(1)
    // Nothing that is drawn can be deleted from behind the page.
    await page.keyboard.press('Delete')
  }
  await rail.getByRole('button', { name: 'Drawing' }).press('Enter')
  await expect(page.locator('.part')).toHaveCount(7)
})
