import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

const repo = new URL('.', import.meta.url).pathname

export default defineConfig({
  root: 'app',
  base: './',
  publicDir: `${repo}public`,
  plugins: [react()],
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
