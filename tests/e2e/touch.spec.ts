import { expect, test } from 'playwright/test'
import { Table } from './table'
import { smallVan } from './van'

test.use({ viewport: { width: 1024, height: 768 }, hasTouch: true, isMobile: true })

test('on a tablet two taps join, and everything can be reached by a finger', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())

  await page.locator('[data-kind="fan"]').scrollIntoViewIfNeeded()
  await page.locator('[data-kind="fan"]').tap()
  await expect(table.part('M2')).toBeVisible()
  await table.settled()
  // A fuse block with three ways in use up to the second: the third is free.
  await table.terminal('F2', '3').tap()
  await table.terminal('M2', '+').tap()
  await expect(table.said).toContainText('Joined: W9')
  await expect(table.card.getByRole('heading', { level: 2 })).toContainText('W9')

  const small = await page.locator('button:visible').evaluateAll((buttons) =>
    buttons
      .map((b) => ({ name: b.getAttribute('aria-label') ?? b.textContent, box: b.getBoundingClientRect() }))
      .filter(({ box }) => box.height < 44)
      .map(({ name, box }) => `${name}: ${box.height}`),
  )
  expect(small).toEqual([])
})

test('a finger beside a terminal still means it, and no finger means its neighbour', async ({ page }) => {
  const table = new Table(page)
  await table.openSmallVan(smallVan())
  const hit = (x: number, y: number) =>
    page.evaluate(
      ([px, py]) => {
        const under = document.elementFromPoint(px!, py!)?.closest<HTMLElement>('.terminal')
        return under ? `${under.dataset.nodeid} ${under.dataset.handleid}` : null
      },
      [x, y],
    )
  const terminals = await page.locator('.part[data-designation="F2"] .terminal').evaluateAll((all) =>
    all.map((t) => {
      const { x, y, width, height } = t.getBoundingClientRect()
      const { nodeid, handleid, handlepos } = (t as HTMLElement).dataset
      return { is: `${nodeid} ${handleid}`, x: x + width / 2, y: y + height / 2, side: handlepos }
    }),
  )
  expect(terminals.length).toBeGreaterThan(3)
  for (const { is, x, y, side } of terminals) {
    expect(await hit(x, y)).toBe(is)
    const out = { left: [-28, 0], right: [28, 0], top: [0, -28], bottom: [0, 28] }[side!]!
    expect(await hit(x + out[0]!, y + out[1]!)).toBe(is)
  }
})
