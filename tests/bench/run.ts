/**
 * Every benchmark of this folder that exports one, one after another, as one table: `npm run bench`. A name, or
 * several, picks some: `npm run bench -- envelope analyse`.
 */
import { readdirSync, readFileSync } from 'node:fs'

const OWN = new URL(import.meta.url).pathname
const wanted = process.argv.slice(2)

/** The function of a benchmark: it ends in "Bench" and gives lines. */
type Bench = () => string[] | Promise<string[]>

const files = readdirSync(new URL('.', import.meta.url))
  .filter((file) => file.endsWith('.ts') && !OWN.endsWith(`/${file}`))
  .filter((file) =>
    /export (async )?function \w+Bench\(/.test(readFileSync(new URL(file, import.meta.url), 'utf8')),
  )
  .filter((file) => wanted.length === 0 || wanted.includes(file.replace('.ts', '')))
  .sort()

for (const file of files) {
  const module: Record<string, unknown> = await import(new URL(file, import.meta.url).href)
  for (const [name, bench] of Object.entries(module)) {
    if (!name.endsWith('Bench') || typeof bench !== 'function') continue
    const title = file.replace('.ts', '')
    for (const line of await (bench as Bench)()) console.log(`${title.padEnd(12)} ${line}`)
  }
}
