import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('an outline and a text: by key, by hand, undone', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const { keyboard, mouse } = page
  const outline = page.locator('[data-zone="battery bay"]')
  const area = async () => (await outline.locator('.catch').first().boundingBox())!

  await test.step('outline a part and name it', async () => {
    await table.part('G1').click()
    await keyboard.press('o')
    await expect(table.card.getByLabel('Name')).toBeFocused()
    await keyboard.type('battery bay')
    await keyboard.press('Enter')
    await table.settled()
    await expect(outline).toHaveCount(1)
    await expect(table.card.getByRole('heading', { level: 2 })).toContainText('battery bay')
  })

  await test.step('resize by keyboard, move with its part by keyboard', async () => {
    const before = await area()
    await keyboard.press('Control+ArrowRight')
    await table.settled()
    await expect.poll(async () => (await area()).width).toBeGreaterThan(before.width + 1)
    const part = (await table.part('G1').boundingBox())!
    await keyboard.press('ArrowDown')
    await table.settled()
    await expect.poll(async () => (await table.part('G1').boundingBox())!.y).toBeGreaterThan(part.y + 1)
    await expect.poll(async () => (await area()).y).toBeGreaterThan(before.y + 1)
    await keyboard.press('Control+z')
    await keyboard.press('Control+z')
    await table.settled()
    await expect.poll(async () => Math.round((await area()).width)).toBe(Math.round(before.width))
  })

  await test.step('drag it by its line: the part goes along', async () => {
    const part = (await table.part('G1').boundingBox())!
    const { x, y, width, height } = await area()
    await mouse.move(x + width * 0.4, y + height - 1)
    await mouse.down()
    await mouse.move(x + width * 0.4 + 40, y + height + 30, { steps: 5 })
    await mouse.up()
    await table.settled()
    await expect.poll(async () => (await table.part('G1').boundingBox())!.x).toBeGreaterThan(part.x + 10)
  })

  await test.step('write on the sheet, rewrite in place, delete', async () => {
    await keyboard.press('Escape')
    const sheet = (await page.locator('[data-canvas]').boundingBox())!
    await mouse.move(sheet.x + 120, sheet.y + sheet.height - 60)
    await keyboard.press('w')
    await page.getByLabel('Text on the sheet').fill('Seal the gland\nfrom below')
    await keyboard.press('Control+Enter')
    const text = page.locator('[data-text="t1"]')
    await expect(text).toContainText('Seal the gland')
    await expect(text).toContainText('from below')
    await text.dblclick()
    await page.getByLabel('Text on the sheet').fill('Seal it')
    await keyboard.press('Control+Enter')
    await expect(text).toHaveText('Seal it')
    await text.click()
    await keyboard.press('Delete')
    await expect(text).toHaveCount(0)
    await keyboard.press('Control+z')
    await expect(text).toHaveText('Seal it')
  })

  await test.step('a drawing note, and its flag at a part', async () => {
    await keyboard.press('Escape')
    await table.card.getByLabel('New note').fill('Torque after the first drive')
    await keyboard.press('Tab')
    await expect(table.card.getByLabel('Note 1', { exact: true })).toHaveValue('Torque after the first drive')
    await table.part('G1').click()
    await table.card.getByRole('group', { name: 'Drawing notes' }).getByRole('checkbox').check()
    // Once to leave the card, once to let go of the part.
    await keyboard.press('Escape')
    await keyboard.press('Escape')
    await expect(table.card.getByText('At G1')).toBeVisible()
  })
})
