/** Makes the pictures of the README's tour: builds the editor, drives it, and prints one sheet. `npm run tour`. */
import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium } from 'playwright'
import { build, preview } from 'vite'
import { findBrowser } from '../browser'
import { Table } from './table'

const root = new URL('../..', import.meta.url).pathname
const pictures = `${root}tests/e2e/tour`
mkdirSync(pictures, { recursive: true })

const site = mkdtempSync(join(tmpdir(), 'loomwright-tour-'))
await build({
  root: `${root}app`,
  configFile: `${root}vite.config.ts`,
  logLevel: 'warn',
  build: { outDir: site },
})
const server = await preview({
  root: `${root}app`,
  configFile: `${root}vite.config.ts`,
  build: { outDir: site },
  preview: { port: 0 },
})
const baseURL = server.resolvedUrls?.local[0]
if (!baseURL) throw new Error('the preview has no address')
const executablePath = findBrowser()
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
})
try {
  const page = await browser.newPage({ baseURL, viewport: { width: 1366, height: 768 } })
  const table = new Table(page)
  const picture = async (name: string): Promise<void> => {
    await table.settled()
    await page.waitForTimeout(800)
    await page.screenshot({ path: `${pictures}/${name}.png` })
  }
  await table.open('first-start')
  await picture('1-demo')
  await page.getByRole('button', { name: 'Designs' }).click()
  await page.getByText('The same van with planted mistakes').click()
  await page.locator('h1').getByText('planted mistakes').waitFor()
  await table.settled()
  await table.findings.getByRole('button', { name: /Bypasses the load-side shunt/ }).click()
  await picture('2-finding')
  await table.findings.getByRole('button', { name: /No protection/ }).click()
  await table.settled()
  await table.card.getByTestId('forward').getByRole('button', { name: 'why?' }).click()
  await picture('3-run')
} finally {
  await browser.close()
  await server.close()
}

const folder = mkdtempSync(join(tmpdir(), 'loomwright-tour-'))
execFileSync(
  'npx',
  [
    ...['tsx', 'app/cli/main.ts', 'pack', 'public/demos/camping-trailer.json', '--out', folder],
    ...['--for', 'designer', '--contents', 'schematic'],
  ],
  { cwd: root },
)
// Behind the contents and the index of sheets.
const DRAWING = '3'
execFileSync('pdftoppm', [
  '-r',
  '80',
  '-png',
  '-f',
  DRAWING,
  '-l',
  DRAWING,
  '-singlefile',
  `${folder}/designer.pdf`,
  `${pictures}/4-sheet`,
])
