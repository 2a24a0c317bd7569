import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('the first start opens on the demo, and nothing is wrong with it', async ({ page }) => {
  const table = new Table(page)
  await table.open()
  await expect(page.locator('h1')).toContainText('Mobile veterinary van')
  await expect(table.checks).toContainText('0 dangers, 0 warnings')
  await table.settled()
  await table.part('G1').waitFor()
})

test('a planted mistake is shown, mended with a look at it first, and the mending undone', async ({
  page,
}) => {
  const table = new Table(page)
  await table.open()
  await page.getByRole('button', { name: 'Designs' }).click()
  await page.getByRole('button', { name: /planted mistakes/ }).click()
  const finding = table.findings.locator('.finding[data-rule="M1"]')
  await finding.getByRole('button').first().click()
  await finding.getByRole('button', { name: /^Mend/ }).click()
  await expect(finding.getByRole('group', { name: 'What mending would do' })).toContainText('is moved from')
  await finding.getByRole('button', { name: 'Do it' }).click()
  await expect(finding).toHaveCount(0)
  await page.keyboard.press('Control+z')
  await expect(finding).toHaveCount(1)
})

test('the menu of the sheet turns, duplicates and arranges', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.part('M1').click({ button: 'right' })
  await page.getByRole('menuitem', { name: /Duplicate/ }).click()
  await expect(table.part('M2')).toBeVisible()
  await page.mouse.click(640, 700, { button: 'right' })
  await page.getByRole('menuitem', { name: /Arrange/ }).click()
  await expect(page.getByRole('button', { name: 'Undo: Arrange' })).toBeVisible()
})

test('a fuse let go on a conductor is fitted into it, takes its name at once, and is undone in one step', async ({
  page,
}) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await expect(page.locator('.run[data-number]')).toHaveCount(8)
  await table.dragFromShelf('fuse-blade', await table.halfway('W3'))
  await page.keyboard.type('Lamp fuse')
  await page.keyboard.press('Enter')
  await expect(table.said).toContainText('fitted into W3')
  await expect(table.card.getByLabel('Name')).toHaveValue('Lamp fuse')
  await table.settled()
  await expect(page.locator('.run[data-number]')).toHaveCount(9)
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Control+z')
  await table.settled()
  await expect(page.locator('.run[data-number]')).toHaveCount(8)
})

test('a load is dragged in, joined, found unprotected, and mended', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await expect(table.checks).toContainText('0 dangers')

  await test.step('drag a fridge in and say what it takes', async () => {
    const [x, y] = await table.middle(table.part('M1'))
    await table.dragFromShelf('fridge', [x, y + 150])
    await expect(table.part('E2')).toBeVisible()
    await table.card.getByLabel('Name').fill('Fridge')
    const current = table.card.getByLabel('Running current')
    await current.fill('6')
    await current.press('Enter')
  })

  await test.step('join it to the battery: one gesture makes feed and return', async () => {
    await table.join(['G1', '+'], ['E2', '+'])
    await expect(table.said).toContainText('W9 and W10')
  })

  await test.step('its worst case is there, and the missing protection', async () => {
    await expect(table.card.getByRole('heading', { level: 2 })).toContainText('W9')
    // A fridge takes constant power: 6 A at 12 V is 7.2 A at 10 V, the lowest that the system runs at.
    await expect(table.card.getByTestId('forward')).toContainText('7.2 A')
    await expect(table.card).toContainText('No protection')
    await table.card.getByTestId('forward').getByRole('button', { name: 'why?' }).click()
    await expect(table.card).toContainText('Fridge takes 7.2 A')
    await expect(table.checks).toContainText(/[1-9] danger/)
  })

  await test.step('the finding shows its place', async () => {
    await table.findings.getByRole('button', { name: /Danger:.*W9/ }).click()
    await expect(table.run('W9')).toHaveClass(/selected/)
    await expect(table.findings.locator('.finding.shown')).toContainText('P1')
  })

  await test.step('mend: take it off and join it to a fuse way', async () => {
    await table.run('W9').waitFor()
    await page.keyboard.press('Escape')
    await table.pickRun('W9')
    await page.keyboard.press('Delete')
    await expect(table.run('W9')).toHaveCount(0)
    await expect(table.run('W10')).toHaveCount(0)
    await table.join(['F2', '3'], ['E2', '+'])
    await expect(table.said).toContainText('W9 and W10')
    await table.card.getByLabel('Size').selectOption('1.5mm2')
    const length = table.card.getByLabel('Length')
    await length.fill('2,5')
    await length.press('Enter')
    await expect(table.card).toContainText('Protected: F2:3 5 A')
    await expect(table.checks).toContainText('0 dangers')
  })
})

test('a rule set that is not known stays named, and the card says by which one it was checked', async ({
  page,
}) => {
  const table = new Table(page)
  const design = JSON.parse(smallVan())
  design.settings.ruleSet = 'some-later-set'
  for (const c of design.conductors) if (c.number === 'W5') c.lengthM = 100
  await table.openSmallVan(JSON.stringify(design))
  await expect(table.card.getByLabel('Rule set').locator('option:checked')).toHaveText(
    /^some-later-set \(not known/,
  )
  await table.pickRun('W5')
  await expect(table.card).toContainText(
    'does not know the rule set "some-later-set". These figures are by another one',
  )
  // A drop beyond its limit stands in its row.
  const drop = table.card.locator('b.beyond')
  await expect(drop).toHaveText(/ %$/)
  expect(await drop.evaluate((b) => getComputedStyle(b).position)).toBe('static')
})

test('every step can be undone and done again, by name', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.pickRun('W5')
  await page.keyboard.press('Delete')
  await expect(table.run('W5')).toHaveCount(0)
  await expect(table.run('W6')).toHaveCount(0)
  await page.getByRole('button', { name: /^Undo: Delete/ }).click()
  await expect(table.run('W5')).toHaveCount(1)
  await page.keyboard.press('Control+y')
  await expect(table.run('W6')).toHaveCount(0)
  await page.keyboard.press('Control+z')
  await expect(table.run('W6')).toHaveCount(1)
})

test('a typed figure is taken back by undo, and left alone by escape', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.pickRun('W3')
  const length = table.card.getByLabel('Length')
  await expect(length).toHaveValue('3')
  await length.fill('7')
  await length.press('Enter')
  await expect(length).toHaveValue('7')
  await page.keyboard.press('Control+z')
  await expect(length).toHaveValue('3')
  await length.fill('9')
  await length.press('Escape')
  await expect(length).toHaveValue('3')
  await expect(table.card.getByRole('heading', { level: 2 })).toContainText('W3')
})

test('parts are copied, pasted, duplicated, lined up and deleted', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.part('E1').click({ position: { x: 30, y: 10 } })
  await page.keyboard.press('Control+c')
  await page.keyboard.press('Control+v')
  await expect(table.part('E2')).toBeVisible()
  await page.keyboard.press('Control+d')
  await expect(table.part('E3')).toBeVisible()
  await page.keyboard.press('Control+a')
  await expect(table.card.getByRole('heading', { level: 2 })).toContainText('9 parts and 8 conductors')
  await table.card.getByRole('button', { name: 'Left edges' }).click()
  await page.keyboard.press('Control+z')
  await page.keyboard.press('Delete')
  await expect(page.locator('.part')).toHaveCount(0)
  await expect(page.getByRole('heading', { name: 'An empty sheet' })).toBeVisible()
})

test('a refused join says why beside the pointer and changes nothing', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  await table.join(['G1', '+'], ['G1', '-'])
  await expect(table.said).toContainText('short circuit')
  await expect(page.locator('.said.refused')).toBeVisible()
  await expect(page.locator('.run')).toHaveCount(8)
})

test('a part that is dragged takes its conductors along', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const before = await table.run('W5').locator('.line').getAttribute('d')
  const [x, y] = await table.middle(table.part('M1'))
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + 60, y + 80, { steps: 6 })
  const during = await table.run('W5').locator('.line').getAttribute('d')
  expect(during).not.toBe(before)
  await page.mouse.up()
  await expect(page.getByRole('button', { name: 'Undo: Move part' })).toBeVisible()
  await page.keyboard.press('Control+z')
  await expect(table.run('W5').locator('.line')).toHaveAttribute('d', before!)
})
