import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test('a stretch of a conductor is laid by hand, stays put, and runs freely again', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const line = table.run('W5').locator('.line')
  const free = await line.getAttribute('d')
  await table.pickRun('W5')
  const grips = table.run('W5').locator('.grip')
  const upright = await grips.evaluateAll((all) =>
    all.findIndex((g) => Number(g.getAttribute('height')) > Number(g.getAttribute('width'))),
  )
  const grip = grips.nth(Math.max(upright, 0))
  const [x, y] = await table.middle(grip)
  const by = upright < 0 ? ([0, 30] as const) : ([30, 0] as const)
  await table.drag([x, y], [x + by[0], y + by[1]])
  await expect(page.getByRole('button', { name: 'Undo: Lay W5 by hand' })).toBeVisible()
  await table.settled()
  const held = await line.getAttribute('d')
  expect(held).not.toBe(free)

  await test.step('it stays when another part moves', async () => {
    const lamp = await table.middle(table.part('E1'))
    await table.drag(lamp, [lamp[0] + 40, lamp[1] - 60])
    await table.settled()
    await expect(line).toHaveAttribute('d', held!)
    await page.keyboard.press('Control+z')
  })
  await test.step('let go by its command, in one step each way', async () => {
    await table.settled()
    await table.pickRun('W5')
    await page.keyboard.press('l')
    await expect(page.getByRole('button', { name: 'Undo: Let W5 run freely' })).toBeVisible()
    await table.settled()
    await expect(line).not.toHaveAttribute('d', held!)
    await page.keyboard.press('Control+z')
    await expect(line).toHaveAttribute('d', held!)
    await page.keyboard.press('Control+z')
    await expect(line).not.toHaveAttribute('d', held!)
  })
})
