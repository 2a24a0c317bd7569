import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { FILES, pagesOf, READERS } from './papers'

/** Records how every page of every pack looks, then every demo on screen. */
const record: Record<string, readonly string[]> = {}
for (const file of FILES)
  for (const reader of READERS) record[`${file} ${reader}`] = await pagesOf(file, reader)
writeFileSync(new URL('papers.json', import.meta.url), `${JSON.stringify(record, null, 1)}\n`)
console.log(`${Object.values(record).flat().length} pages recorded`)

const { status } = spawnSync(
  'npx',
  ['playwright', 'test', '--config', 'tests/e2e/playwright.config.ts', 'pictures'],
  { stdio: 'inherit', env: { ...process.env, RECORD_PICTURES: 'yes' } },
)
process.exit(status ?? 1)
