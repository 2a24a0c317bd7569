import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const ROOT = new URL('../../', import.meta.url)
const text = (path: string): string => readFileSync(new URL(path, ROOT), 'utf8')

/** Rows of the list: number, example, file, words. */
const rows = text('tests/reference/worked-examples.md')
  .split('\n')
  .filter((line) => /^\| \d/.test(line))
  .map((line) => line.split(' | ').map((cell) => cell.replace(/^\| |\s*\|$/g, '').trim()))

describe('the list of worked examples', () => {
  it('names all of 1 to 26, and 20a', () => {
    const numbers = new Set(rows.map(([no]) => no))
    const wanted = [...Array.from({ length: 26 }, (_, i) => `${i + 1}`), '20a']
    expect([...numbers].sort()).toEqual(wanted.sort())
  })

  it.each(rows.map(([no, what, file, words]) => [no!, what!, file!, words!] as const))(
    '%s, %s: stands in %s',
    (_, __, file, words) => {
      expect(text(file)).toContain(words)
    },
  )
})
