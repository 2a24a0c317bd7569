import { mkdirSync, writeFileSync } from 'node:fs'
import react from '@vitejs/plugin-react'
import { build, type PreviewServer, preview } from 'vite'

const ROOT = new URL('../../../', import.meta.url).pathname
const CACHE = `${ROOT}node_modules/.cache/`

/** Builds the editor for use and serves it on loopback. */
export async function serveEditor(): Promise<PreviewServer> {
  const outDir = `${CACHE}site-for-frames`
  const config = { configFile: `${ROOT}vite.config.ts`, root: `${ROOT}app`, logLevel: 'error' as const }
  await build({ ...config, build: { outDir, emptyOutDir: true } })
  return preview({ ...config, build: { outDir }, preview: { host: '127.0.0.1', port: 0 } })
}

/** Builds the page with the bare canvas library and serves it on loopback. */
export async function serveBare(): Promise<PreviewServer> {
  const outDir = `${CACHE}bare-for-frames`
  const config = {
    configFile: false as const,
    root: new URL('.', import.meta.url).pathname,
    logLevel: 'error' as const,
  }
  await build({
    ...config,
    plugins: [react()],
    build: {
      outDir,
      emptyOutDir: true,
      target: 'esnext',
      rolldownOptions: { input: `${config.root}bare.html` },
    },
  })
  return preview({ ...config, build: { outDir }, preview: { host: '127.0.0.1', port: 0 } })
}

/** What the bare page is to draw. */
export function giveBare(drawing: unknown): void {
  mkdirSync(`${CACHE}bare-for-frames`, { recursive: true })
  writeFileSync(`${CACHE}bare-for-frames/drawing.json`, JSON.stringify(drawing))
}

export const addressOf = (server: PreviewServer): string => {
  const [url] = server.resolvedUrls?.local ?? []
  if (!url) throw new Error('The page is not served.')
  return url
}
