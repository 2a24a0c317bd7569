import { createReadStream, existsSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { extname } from 'node:path'
import { expect, test } from 'playwright/test'
import { Table } from './table'

const SITE = new URL('../../node_modules/.cache/site-for-tests', import.meta.url).pathname
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
}

/** The built page from a server of its own, that can be taken away. */
function serve(): Promise<{ readonly server: Server; readonly url: string }> {
  const server = createServer((asked, answer) => {
    const path = new URL(asked.url!, 'http://any').pathname
    const file = `${SITE}${path === '/' ? '/index.html' : decodeURIComponent(path)}`
    if (!existsSync(file)) return answer.writeHead(404).end()
    answer.writeHead(200, {
      'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
      vary: 'Origin',
    })
    createReadStream(file).pipe(answer)
  })
  return new Promise((resolve) =>
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      resolve({ server, url: `http://127.0.0.1:${typeof address === 'object' && address?.port}` })
    }),
  )
}

test('once visited, everything works without server and network, and nothing is asked elsewhere', async ({
  browser,
}) => {
  const { server, url } = await serve()
  const context = await browser.newContext({ baseURL: url })
  const asked: string[] = []
  context.on('request', (request) => asked.push(request.url()))
  const page = await context.newPage()
  const table = new Table(page)
  await table.open()
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready
  })
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state ?? 'none'))
    .toBe('activated')

  server.closeAllConnections()
  await new Promise((closed) => server.close(closed))
  await context.setOffline(true)
  await page.reload()
  await expect(page.locator('h1')).toContainText('Mobile veterinary van')
  await expect(table.checks).not.toHaveText('Checking…')
  await table.settled()

  await test.step('another demo, sizes and paper come without the network too', async () => {
    await page.getByRole('button', { name: 'Designs' }).click()
    await page.getByRole('button', { name: /planted mistakes/ }).click()
    await expect(table.checks).toContainText(/[1-9]\d* danger/)
    await page.getByRole('button', { name: 'Size it', exact: true }).click()
    const sheet = page.getByRole('dialog', { name: 'Size it' })
    await expect(sheet.locator('.copper, .problems').first()).toBeVisible({ timeout: 60_000 })
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Packs on paper' }).click()
    await expect(page.locator('.paper-sheet:not(.old) svg')).toBeVisible({ timeout: 60_000 })
    const download = page.waitForEvent('download')
    await page.getByRole('button', { name: 'PDF of the pack' }).click()
    expect((await download).suggestedFilename()).toMatch(/\.pdf$/)
  })

  await test.step('every stage comes without the network, though none was looked at before', async () => {
    for (const [stage, there] of [
      ['Schedules', 'main.schedules table'],
      ['Bench', '.bench-card'],
      ['Commission', '.test-hand'],
      ['Handover', '.book'],
      ['Revisions', 'main.revisions'],
    ] as const) {
      await page.getByRole('navigation', { name: 'Stages of the job' }).getByText(stage).click()
      await expect(page.locator(there).first()).toBeVisible({ timeout: 60_000 })
    }
  })

  const elsewhere = asked.filter((to) => !to.startsWith(url) && !/^(blob|data):/.test(to))
  expect(elsewhere).toEqual([])
  await context.close()
})
