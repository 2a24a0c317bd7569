import { chromium, expect, test } from 'playwright/test'
import { readDesign } from '../../engine'
import { Table } from './table'
import { smallVan } from './van'

test('a browser that is killed in the middle of editing loses nothing', async ({ baseURL }, info) => {
  const profile = info.outputPath('profile')
  const { launchOptions, viewport } = info.project.use
  const launch = () =>
    chromium.launchPersistentContext(profile, {
      ...launchOptions,
      viewport: viewport ?? null,
      baseURL: baseURL!,
    })
  const context = await launch()
  const page = await context.newPage()
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.part('M1').click()
  await table.card.getByLabel('Name').fill('Shower pump')
  await page.keyboard.press('Enter')
  await table.dragFromShelf('fan', [500, 600])
  await expect(table.part('M2')).toBeVisible()
  // One second is what may be lost; no unload handler may run.
  await page.waitForTimeout(1000)
  const closed = new Promise((resolve) => context.once('close', resolve))
  const session = await context.newCDPSession(page)
  await session.send('Browser.crash').catch(() => {})
  await closed

  const later = await launch()
  const again = new Table(await later.newPage())
  await again.open()
  await expect(again.page.locator('h1')).toContainText('Small van')
  await expect(again.part('M2')).toBeVisible()
  await again.part('M1').click()
  await expect(again.card.getByLabel('Name')).toHaveValue('Shower pump')
  await later.close()
})

test('what is being typed when the page is loaded again is not lost', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.part('M1').click()
  await table.card.getByLabel('Name').fill('Shower pump')
  await page.reload()
  await expect(table.part('M1')).toContainText('Shower pump')

  await page.getByRole('navigation', { name: 'Stages of the job' }).getByText('Handover').click()
  await page.getByRole('button', { name: 'Add a paragraph after "Everyday use"' }).click()
  await expect(page.getByText('Kept in this browser', { exact: true })).toBeVisible()
  await page.getByLabel('Your paragraph', { exact: true }).fill('Turn the blue tap to the left.')
  await page.reload()
  await expect(page.locator('.book')).toContainText('Turn the blue tap to the left.')
})

test('a browser that keeps nothing more says so, on a telephone as well', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await page.setViewportSize({ width: 390, height: 844 })
  await page.evaluate(() => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('No room left.', 'QuotaExceededError')
    }
  })
  await page.getByRole('navigation', { name: 'Stages of the job' }).getByText('Bench').click()
  await page.locator('.bench-card').getByRole('button', { name: 'Cut', exact: true }).click()
  const told = page.getByRole('contentinfo').getByText('Could not be kept: save to a file')
  await expect(told).toBeInViewport({ ratio: 1 })
})

test('a damaged file gives its problems and changes nothing', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const problems = page.getByRole('dialog', { name: /Problems in/ })

  for (const [name, text, says] of [
    ['junk.json', 'not a design {', /line|JSON|design/],
    ['foreign.json', '{"nodes": []}', /format number/],
    ['future.json', '{"loomwright": 999}', /later version/],
    ['cut.json', smallVan().slice(0, 900), /line|end|JSON/],
  ] as const) {
    await table.dropFile(name, text)
    await expect(problems).toContainText(says)
    await problems.getByRole('button', { name: 'Leave it' }).click()
    await expect(table.part('G1')).toBeVisible()
    await expect(page.locator('.part')).toHaveCount(7)
  }

  const damaged = smallVan().replace('"turn": 0', '"turn": 45')
  await table.dropFile('turned.json', damaged)
  await expect(problems).toContainText('turn')
  await problems.getByRole('button', { name: 'Open what could be read' }).click()
  await expect(page.locator('h1')).toContainText('Small van')
})

test('a design is saved to a real file that reads back the same', async ({ page }) => {
  // Without the browser's own file window the file comes as a download.
  await page.addInitScript(() => {
    Object.assign(window, { showSaveFilePicker: undefined, showOpenFilePicker: undefined })
  })
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const download = page.waitForEvent('download')
  await page.getByRole('button', { name: 'Save to a file' }).click()
  const stream = await (await download).createReadStream()
  let text = ''
  for await (const piece of stream) text += piece
  expect(text).toBe(smallVan())
  expect(readDesign(text).problems).toEqual([])
})

test('a file of the design that is open takes its place, can be changed, and the state before can be gone back to', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.dragFromShelf('fan', [500, 600])
  await expect(table.part('M2')).toBeVisible()
  await expect(page.getByText('Kept in this browser', { exact: true })).toBeVisible()

  await table.dropFile('small-van.json', smallVan())
  await expect(table.part('M2')).toHaveCount(0)
  await expect(table.said).toContainText('Earlier states')
  await table.settled()
  await table.part('M1').click()
  await page.keyboard.press('Delete')
  await expect(table.part('M1')).toHaveCount(0)

  await page.getByRole('button', { name: 'Designs' }).click()
  await page.getByRole('button', { name: 'Earlier states of this design' }).click()
  const before = page.getByRole('listitem').filter({ hasText: 'Before small-van.json was opened' })
  await before.getByRole('button', { name: /^Go back/ }).click()
  await expect(table.part('M2')).toBeVisible()
})

test('a second tab on the same design looks, and opens as a copy', async ({ context }) => {
  const first = new Table(await context.newPage())
  await first.openSmallVan(smallVan())
  await first.dragFromShelf('fan', [500, 600])
  await expect(first.page.getByText('Kept in this browser', { exact: true })).toBeVisible()

  const second = new Table(await context.newPage())
  await second.open()
  const warning = second.page.getByRole('alert').filter({ hasText: 'Another tab has this design open' })
  await expect(warning).toBeVisible()
  await second.part('M2').click()
  await second.page.keyboard.press('Delete')
  await expect(second.part('M2')).toBeVisible()
  await warning.getByRole('button', { name: 'Open a copy' }).click()
  await expect(second.page.locator('h1')).toContainText('(copy)')
  await second.part('M2').click()
  await second.page.keyboard.press('Delete')
  await expect(second.part('M2')).toHaveCount(0)
  await expect(first.part('M2')).toBeVisible()
})

test('a second tab takes over as the first has left it, once the first is closed', async ({ context }) => {
  const first = new Table(await context.newPage())
  await first.openSmallVan(smallVan())
  await first.dragFromShelf('fan', [500, 600])
  await expect(first.page.getByText('Kept in this browser', { exact: true })).toBeVisible()
  const second = new Table(await context.newPage())
  await second.open()
  await expect(second.part('M2')).toBeVisible()
  await first.page.keyboard.press('Enter')
  await first.page.keyboard.press('Control+d')
  await expect(first.part('M3')).toBeVisible()
  await expect(first.page.getByText('Kept in this browser', { exact: true })).toBeVisible()
  await first.page.close()

  // On a tablet, too, where the line under the sheet has less room.
  await second.page.setViewportSize({ width: 1024, height: 768 })
  await second.page.getByRole('button', { name: 'Change it here' }).click()
  await expect(second.part('M3')).toBeVisible()
  await second.part('M3').click()
  await second.page.keyboard.press('Delete')
  await expect(second.part('M3')).toHaveCount(0)
  const third = new Table(await context.newPage())
  await third.open()
  await expect(third.page.getByRole('alert').filter({ hasText: 'Another tab has this design' })).toBeVisible()
})

test('the newest twenty states are kept, and going back to one is undone', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const earlier = page.getByRole('dialog', { name: 'Earlier states' })
  const title = table.card.getByLabel('Title')
  const goBack = async (n: number) => {
    await title.fill(`Van ${n}`)
    await title.press('Enter')
    await page.getByRole('button', { name: 'Designs' }).click()
    await page.getByRole('button', { name: 'Earlier states of this design' }).click()
    await earlier
      .getByRole('button', { name: /^Go back/ })
      .last()
      .click()
    await expect(earlier).toHaveCount(0)
  }
  await goBack(1)
  await expect(page.locator('h1')).toContainText('Small van')
  await page.getByRole('button', { name: 'Undo: Go back to "On opening"' }).click()
  await expect(page.locator('h1')).toContainText('Van 1')
  for (let n = 2; n <= 22; n++) await goBack(n)
  await page.getByRole('button', { name: 'Designs' }).click()
  await page.getByRole('button', { name: 'Earlier states of this design' }).click()
  await expect(earlier.locator('li')).toHaveCount(20)
})

test('designs are listed with their pictures, opened and thrown away', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.dragFromShelf('fan', [500, 600])
  await page.getByRole('button', { name: 'Designs' }).click()
  const designs = page.getByRole('dialog', { name: 'Designs' })
  await expect(designs.getByText('Small van')).toBeVisible()
  await designs.getByRole('button', { name: 'Empty sheet' }).click()
  await expect(page.getByRole('heading', { name: 'An empty sheet' })).toBeVisible()
  await page.waitForTimeout(2500)
  await page.getByRole('button', { name: 'Designs' }).click()
  await expect(designs.locator('img')).not.toHaveCount(0)
  await designs.getByRole('button', { name: /^Small van/ }).click()
  await expect(table.part('M2')).toBeVisible()
})
