import { readFileSync, writeFileSync } from 'node:fs'
import { expect, type Page, test } from 'playwright/test'
import { alike, gridOf } from '../pictures/grid'
import { DEMOS } from '../scenarios/demos/all'

/** Recorded by `npm run pictures`; look at the screens before you record them. */
const FILE = new URL('../pictures/screens.json', import.meta.url)
const RECORD: Record<string, string> = JSON.parse(readFileSync(FILE, 'utf8'))
const recording = process.env.RECORD_PICTURES === 'yes'

const VIEWS = ['Single-line', 'Both poles', 'Data links']

/** The grid of a part of the page; the browser itself decodes the picture. */
async function gridOn(page: Page, selector: string): Promise<string> {
  const png = (await page.locator(selector).screenshot()).toString('base64')
  const { grey, width, height } = await page.evaluate(async (data) => {
    const image = new Image()
    image.src = `data:image/png;base64,${data}`
    await image.decode()
    const canvas = new OffscreenCanvas(image.width, image.height)
    const pen = canvas.getContext('2d')!
    pen.drawImage(image, 0, 0)
    const { data: rgba } = pen.getImageData(0, 0, image.width, image.height)
    const grey = Array.from({ length: rgba.length / 4 }, (_, i) =>
      Math.round(0.299 * rgba[4 * i]! + 0.587 * rgba[4 * i + 1]! + 0.114 * rgba[4 * i + 2]!),
    )
    return { grey, width: image.width, height: image.height }
  }, png)
  return gridOf(Uint8Array.from(grey), width, height)
}

for (const { file, title } of DEMOS)
  test(`${title} looks as it did, in each view, light and dark`, async ({ page }) => {
    await page.addInitScript(() => localStorage.setItem('loomwright-cautions', 'read'))
    await page.goto('/')
    await page.getByRole('button', { name: 'Designs' }).click()
    await page.getByRole('dialog').getByRole('button', { name: title }).first().click()
    const changed: string[] = []
    for (const theme of ['Dark paper', 'Light paper']) {
      await page.getByRole('button', { name: theme }).click()
      for (const view of VIEWS) {
        await page.getByRole('radio', { name: view }).click()
        await expect(page.locator('.sheet')).toHaveAttribute('aria-busy', 'false')
        await page.getByRole('button', { name: 'Whole drawing' }).click()
        await page.mouse.move(700, 4)
        // The sheet glides to the whole drawing.
        await page.waitForTimeout(500)
        const [key, grid] = [`${file} ${view} ${theme}`, await gridOn(page, '.sheet')]
        if (recording) RECORD[key] = grid
        else if (!alike(grid, RECORD[key] ?? '')) changed.push(`${view}, ${theme}`)
      }
    }
    if (recording) writeFileSync(FILE, `${JSON.stringify(RECORD, null, 1)}\n`)
    expect(changed, 'views that look otherwise').toEqual([])
  })
