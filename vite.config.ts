import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'

const repo = new URL('.', import.meta.url).pathname

/**
 * Writes offline.js beside the page: a service worker that keeps every file of this build under the hash of them all, and
 * answers from there. It touches nothing but files of its own origin, and asks nobody for anything. A later build takes over
 * when the last page of this one is closed: a page never meets files of another build.
 */
function offline(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    // After the page itself has been made.
    enforce: 'post',
    generateBundle(_options, bundle) {
      const hash = createHash('sha256')
      const files = Object.values(bundle).map((file) => {
        hash.update(file.fileName).update(file.type === 'chunk' ? file.code : file.source)
        return file.fileName
      })
      for (const entry of readdirSync(`${repo}public`, { recursive: true, withFileTypes: true })) {
        if (!entry.isFile()) continue
        const path = `${entry.parentPath}/${entry.name}`
        hash.update(path.slice(repo.length)).update(readFileSync(path))
        files.push(path.slice(`${repo}public/`.length))
      }
      const source = worker(hash.digest('hex').slice(0, 16), ['./', ...files.sort()])
      this.emitFile({ type: 'asset', fileName: 'offline.js', source })
    },
  }
}

const worker = (
  hash: string,
  files: readonly string[],
) => `const MINE = 'loomwright ' + self.registration.scope + ' '
const NAME = MINE + ${JSON.stringify(hash)}
const FILES = ${JSON.stringify(files)}

self.addEventListener('install', (e) => {
  const wishes = FILES.map((file) => new Request(file, { cache: 'reload' }))
  e.waitUntil(caches.open(NAME).then((kept) => kept.addAll(wishes)))
})

self.addEventListener('activate', (e) => {
  const old = (name) => name.startsWith(MINE) && name !== NAME
  const clear = (names) => Promise.all(names.filter(old).map((name) => caches.delete(name)))
  e.waitUntil(caches.keys().then(clear).then(() => self.clients.claim()))
})

self.addEventListener('fetch', (e) => {
  const url = new URL(e.request.url)
  if (e.request.method !== 'GET' || url.origin !== self.location.origin) return
  const page = e.request.mode === 'navigate' && url.pathname === new URL('./', self.registration.scope).pathname
  const asked = page ? './' : e.request
  e.respondWith(
    caches.open(NAME).then((kept) => kept.match(asked, { ignoreVary: true })).then((found) => found ?? fetch(e.request)),
  )
})
`

export default defineConfig({
  root: 'app',
  base: './',
  publicDir: `${repo}public`,
  plugins: [react(), offline()],
  // Optional parts of the PDF library that draw web pages: never used here.
  resolve: {
    alias: Object.fromEntries(
      ['html2canvas', 'dompurify', 'canvg'].map((name) => [name, `${repo}app/print/unused.ts`]),
    ),
  },
  build: { outDir: `${repo}dist`, emptyOutDir: true, chunkSizeWarningLimit: 900 },
  server: { host: '127.0.0.1', port: 5173 },
  preview: { host: '127.0.0.1', port: 4173 },
  worker: { format: 'es' },
  // Reached by a worker only: found late, it would make the development server load the page again.
  optimizeDeps: { include: ['jspdf'] },
  test: {
    root: repo,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 60_000,
  },
})
