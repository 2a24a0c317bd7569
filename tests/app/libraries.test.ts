import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { LIBRARIES, licenceText } from '../../app/help/libraries'

const read = (path: string) => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'))

it('names every package that runs in the page, with the licence that it states', () => {
  const { dependencies } = read('package.json') as { dependencies: Record<string, string> }
  expect(LIBRARIES.map((l) => l.key).sort()).toEqual(Object.keys(dependencies).sort())
  for (const { key, licence } of LIBRARIES) {
    const stated: string = read(`node_modules/${key}/package.json`).license
    for (const one of stated.split(' AND ')) expect(licence, key).toContain(one)
  }
})

it('carries the text of each licence with its copyright', async () => {
  for (const { key } of LIBRARIES) expect(await licenceText(key), key).toMatch(/copyright/i)
})
