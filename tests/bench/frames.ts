/**
 * Work of a frame while a part is dragged: our canvas with routes and engine on, against the bare canvas library with
 * the same number of nodes and edges, in one run of one Chromium: `npm run bench -- frames`.
 */
import { type Browser, chromium, type Page } from 'playwright'
import { type Design, writeDesign } from '../../engine/index'
import { findBrowser } from '../browser'
import { Table } from '../e2e/table'
import { fleet } from './fleet'
import { bareOf } from './frames/bareof'
import { addressOf, giveBare, serveBare, serveEditor } from './frames/site'
import { type FrameWork, quantile, workOf } from './frames/work'

/** Systems of 144 parts, and which of them stands in the middle. */
const SIZES = [
  [1, 0],
  [7, 4],
] as const
const STEPS = 60
/** What is dragged: the first fuse block of a system, with 13 conductors. */
const dragged = (middle: number): string => `p10-${middle}`

export async function framesBench(): Promise<string[]> {
  const executablePath = findBrowser()
  if (!executablePath) return ['not measured: no Chromium is installed']
  const args = ['--no-sandbox', '--disable-gpu', '--disable-background-networking']
  const browser = await chromium.launch({ executablePath, args })
  const [editor, bare] = [await serveEditor(), await serveBare()]
  try {
    const lines: string[] = []
    for (const [systems, middle] of SIZES) {
      const design = fleet(systems)
      const plain = await onBare(browser, addressOf(bare), design, dragged(middle))
      const ours = await onEditor(browser, addressOf(editor), design, dragged(middle))
      lines.push(
        `dragging at ${design.parts.length} parts, ${design.conductors.length} conductors, the whole sheet in sight:`,
        `  page: ${compared(ours.page, plain.page)}`,
        `  pixels: ${compared(ours.pixels, plain.pixels)}`,
        `  together: ${compared(sums(ours), sums(plain))}`,
      )
    }
    return lines
  } finally {
    await browser.close()
    await Promise.all([editor.close(), bare.close()])
  }
}

const sums = ({ page, pixels }: FrameWork): number[] => page.map((ms, k) => ms + pixels[k]!)

function compared(ours: readonly number[], bare: readonly number[]): string {
  const [half, most] = [0.5, 0.95].map((part) => [quantile(ours, part), quantile(bare, part)] as const)
  const said = ([a, b]: readonly [number, number]) =>
    `${a.toFixed(1)} ms of ${b.toFixed(1)} ms, ${(a / b).toFixed(2)} ×`
  return `median ${said(half!)}; 95th percentile ${said(most!)}`
}

async function onBare(browser: Browser, url: string, design: Design, part: string): Promise<FrameWork> {
  giveBare(bareOf(design))
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 } })
  await page.goto(`${url}bare.html`)
  await page.locator('.react-flow__edge').last().waitFor({ state: 'attached' })
  return workOfDrag(browser, page, part)
}

async function onEditor(browser: Browser, url: string, design: Design, part: string): Promise<FrameWork> {
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 }, baseURL: url })
  const table = new Table(page)
  await table.open()
  await table.dropFile('fleet.json', writeDesign(design))
  await page.locator(`[data-id="${part}"]`).waitFor()
  await page.locator('.sheet[aria-busy="false"]').waitFor({ timeout: 120_000 })
  return workOfDrag(browser, page, part)
}

/** Drags the part to and fro by a step of the grid or more at a time. */
async function workOfDrag(browser: Browser, page: Page, part: string): Promise<FrameWork> {
  await page.waitForTimeout(1500)
  const box = await page.locator(`[data-id="${part}"]`).boundingBox()
  if (!box) throw new Error('What is to be dragged is not in sight.')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x + 6, y + 6, { steps: 3 })
  const work = await workOf(browser, page, STEPS, (k) => {
    const turn = (2 * Math.PI * k) / STEPS
    return page.mouse.move(x + 60 * Math.sin(turn), y + 60 * Math.sin(2 * turn))
  })
  await page.mouse.up()
  await page.close()
  return work
}
