import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { alike, gridOf } from './grid'
import { canRender, FILES, pagesOf, READERS } from './papers'

/** Recorded by `npm run pictures`; look at the pages before you record them. */
const RECORD: Readonly<Record<string, readonly string[]>> = JSON.parse(
  readFileSync(new URL('papers.json', import.meta.url), 'utf8'),
)

describe.skipIf(!canRender())('every page of every pack looks as it did', () => {
  for (const file of FILES)
    for (const reader of READERS)
      it(`${file} for the ${reader}`, { timeout: 120_000 }, async () => {
        const pages = await pagesOf(file, reader)
        const before = RECORD[`${file} ${reader}`] ?? []
        expect(pages.length).toBe(before.length)
        const changed = pages.flatMap((grid, i) => (alike(grid, before[i]!) ? [] : [i + 1]))
        expect(changed, 'pages that look otherwise').toEqual([])
      })
})

describe('grids of pictures', () => {
  const [w, h] = [240, 160]
  const page = (draw: (set: (x: number, y: number) => void) => void, paper = 250): string => {
    const grey = new Uint8Array(w * h).fill(paper)
    draw((x, y) => {
      grey[y * w + x] = 20
    })
    return gridOf(grey, w, h)
  }
  const box = (x0: number, y0: number) => (set: (x: number, y: number) => void) => {
    for (let i = 0; i < 60; i++) {
      set(x0 + i, y0)
      set(x0 + i, y0 + 40)
      if (i < 40) set(x0, y0 + i)
    }
  }
  it('tell a box that is gone or has moved, and not one that has moved by a pixel', () => {
    const here = page(box(30, 30))
    expect(alike(here, page(box(31, 30)))).toBe(true)
    expect(
      alike(
        here,
        page(() => {}),
      ),
    ).toBe(false)
    expect(alike(here, page(box(90, 80)))).toBe(false)
  })
})
