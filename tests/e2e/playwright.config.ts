import { createServer } from 'node:net'
import { defineConfig } from 'playwright/test'
import { findBrowser } from '../browser'

const root = new URL('../..', import.meta.url).pathname
const site = `${root}node_modules/.cache/site-for-tests`

/** A port nobody listens on. Kept in the environment, so that the worker processes read the same one. */
async function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.once('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const address = server.address()
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0))
    })
  })
}

process.env.E2E_PORT ??= String(await freePort())
const port = process.env.E2E_PORT
const executablePath = findBrowser()

export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: `${root}test-results`,
  timeout: 90_000,
  expect: { timeout: 15_000 },
  workers: 1,
  fullyParallel: false,
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    viewport: { width: 1366, height: 768 },
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
    },
  },
  webServer: {
    command: `npx vite build --logLevel warn --outDir ${site} && npx vite preview --outDir ${site} --port ${port} --strictPort`,
    cwd: root,
    url: `http://127.0.0.1:${port}`,
    reuseExistingServer: false,
    timeout: 180_000,
  },
})
