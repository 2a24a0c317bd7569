import AxeBuilder from '@axe-core/playwright'
import { expect, type Page, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

const open = async (page: Page): Promise<void> => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page
    .getByRole('navigation', { name: 'Stages of the job' })
    .getByRole('button', { name: 'Handover' })
    .click()
}

const words = (page: Page) => page.getByRole('complementary', { name: 'Your words' })
const book = (page: Page) => page.locator('.book')
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ })

test('the installer names who built it, adds a paragraph, moves it, hides a chapter, and takes it all back', async ({
  page,
}) => {
  await open(page)
  await test.step('names stand on the front page at once', async () => {
    await words(page).getByLabel('Installer', { exact: true }).fill('Hale and Daughter')
    await page.keyboard.press('Tab')
    await expect(book(page).locator('.front')).toContainText('Hale and Daughter')
  })

  await test.step('a paragraph of one’s own stands where it was put, and moves past its neighbours', async () => {
    await words(page).getByRole('button', { name: 'Add a paragraph after "Everyday use"' }).click()
    await words(page).getByLabel('Heading of your paragraph').fill('The blue tap')
    await page.keyboard.press('Tab')
    await words(page).getByLabel('Your paragraph', { exact: true }).fill('Turn it to the left.')
    await page.keyboard.press('Tab')
    const titles = book(page).locator('.chapter > h2')
    const list = async () => (await titles.allTextContents()).map((t) => t.replace(/^\d+\s*/, '').trim())
    const after = async (title: string) => (await list())[(await list()).indexOf(title) + 1]
    expect(await after('Everyday use')).toBe('The blue tap')
    await expect(book(page)).toContainText('Turn it to the left.')
    await words(page).getByRole('button', { name: 'Move "The blue tap" down' }).click()
    await expect.poll(() => after('Laying up for winter')).toBe('The blue tap')
    await undo(page).click()
    await expect.poll(() => after('Everyday use')).toBe('The blue tap')
  })

  await test.step('a chapter is left out, and the others are numbered anew', async () => {
    await words(page).getByRole('checkbox', { name: 'What each switch does' }).uncheck()
    await expect(book(page).getByRole('region', { name: 'What each switch does' })).toHaveCount(0)
    await expect(book(page).getByRole('region', { name: 'Your system at a glance' })).toContainText('3')
    await undo(page).click()
    await expect(book(page).getByRole('region', { name: 'What each switch does' })).toBeAttached()
  })

  await test.step('the pack speaks German', async () => {
    await words(page).getByLabel('Language of the pack').selectOption('Deutsch')
    await expect(book(page).locator('h2').first()).toHaveText('Was suchen Sie?')
    await expect(book(page)).toHaveAttribute('lang', 'de-DE')
    await undo(page).click()
    await expect(book(page).locator('h2').first()).toHaveText('What do you need?')
  })

  await test.step('nothing of it is out of reach', async () => {
    const { violations } = await new AxeBuilder({ page }).include('.handover').analyze()
    expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.html}`)).toEqual([])
  })
})

test('on a telephone a dead thing is found from the front page, and nothing sticks out', async ({ page }) => {
  await open(page)
  await page.setViewportSize({ width: 390, height: 844 })
  await book(page)
    .getByRole('button', { name: /Something does not work/ })
    .click()
  const finder = book(page).getByRole('region', { name: 'Something does not work' })
  await expect(finder.getByRole('heading', { name: 'Something does not work' })).toBeInViewport()
  await finder.getByLabel('What does not work?').fill('teapot')
  await expect(finder).toContainText('Nothing here is called so.')
  await finder.getByLabel('What does not work?').fill('pump')
  await expect(finder).toContainText('Never a larger one')
  await expect(finder.locator('.find').first()).toContainText('Water pump')
  await expect(finder.locator('.find h3').filter({ hasText: 'Reading lamp' })).toHaveCount(0)
  const pump = finder.locator('.find').filter({ hasText: 'Water pump' }).first()
  await pump.scrollIntoViewIfNeeded()
  await expect(pump.locator('.badge')).toContainText('A')
  const wide = await page.evaluate(() => {
    const paper = document.querySelector('.handover .paper')!
    return [paper.scrollWidth - paper.clientWidth, document.scrollingElement!.scrollTop]
  })
  expect(wide).toEqual([0, 0])
  await page.getByRole('button', { name: 'Front page' }).click()
  await expect(book(page).getByRole('heading', { level: 1 })).toBeInViewport()
  await page.getByRole('button', { name: 'Your words' }).click()
  await expect(words(page).getByLabel('Customer')).toBeVisible()
  await expect(book(page)).toBeHidden()
})
