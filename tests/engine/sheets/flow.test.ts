import { describe, expect, test } from 'vitest'
import { type FlowBlock, flow, heading, listBlocks } from '../../../engine/sheets/flow'

const AREA = { x: 10, y: 20, w: 308, h: 100 }
const COLUMNS = 3

/** A row of a height that carries its name. */
const row = (name: string, h = 10): FlowBlock => ({
  h,
  marks: [{ is: 'text', at: [0, h / 2], text: name, height: 2.5 }],
})

const rows = (count: number, name: string, h = 10): FlowBlock[] =>
  Array.from({ length: count }, (_, i) => row(`${name}${i + 1}`, h))

/** Names in each column of each page, from the top. */
function columnsOf(blocks: readonly FlowBlock[]): string[][][] {
  return flow(blocks, AREA, COLUMNS).map(({ marks }) => {
    const texts = marks.flatMap((m) => (m.is === 'text' ? [m] : []))
    const xs = [...new Set(texts.map((t) => t.at[0]))].sort((a, b) => a - b)
    return xs.map((x) => texts.filter((t) => t.at[0] === x).map((t) => t.text))
  })
}

describe('blocks set into columns', () => {
  test('keep their order and stay inside the area', () => {
    const blocks = rows(47, 'r', 9)
    expect(columnsOf(blocks).flat(2)).toEqual(blocks.map((_, i) => `r${i + 1}`))
    for (const { marks } of flow(blocks, AREA, COLUMNS))
      for (const mark of marks)
        if (mark.is === 'text') {
          expect(mark.at[1]).toBeGreaterThan(AREA.y)
          expect(mark.at[1]).toBeLessThan(AREA.y + AREA.h)
        }
  })

  test('take no more pages than their heights ask for', () => {
    expect(columnsOf(rows(30, 'r'))).toHaveLength(1)
    expect(columnsOf(rows(31, 'r'))).toHaveLength(2)
    expect(columnsOf(rows(60, 'r'))).toHaveLength(2)
  })

  test('fill the last page evenly', () => {
    expect(
      columnsOf(rows(42, 'r'))
        .at(-1)!
        .map((column) => column.length),
    ).toEqual([4, 4, 4])
  })

  test('the tail of a section does not stand on a page of its own: the section begins there', () => {
    const blocks = [...rows(22, 'a'), heading('B', 100), ...rows(8, 'b')]
    const pages = columnsOf(blocks)
    expect(pages.map((page) => page.flat())).toEqual([
      rows(22, 'a').map((_, i) => `a${i + 1}`),
      ['B', ...rows(8, 'b').map((_, i) => `b${i + 1}`)],
    ])
  })

  test('what is said again stands above the first of every further column, and is no block of its own', () => {
    const blocks = rows(47, 'r').map((r) => ({ ...r, again: row('again') }))
    const columns = columnsOf([row('head'), ...blocks]).flat()
    expect(columns[0]![0]).toBe('head')
    for (const column of columns.slice(1)) expect(column[0]).toBe('again')
    expect(columns.flat().filter((t) => t.startsWith('r'))).toEqual(blocks.map((_, i) => `r${i + 1}`))
    for (const column of columns) expect(column.length).toBeLessThanOrEqual(10)
  })

  test('a list has two rows at least before and after a break', () => {
    for (let above = 0; above < 30; above++)
      for (const length of [4, 9, 14]) {
        const list = listBlocks([heading('L', 100), row('intro')], rows(length, 'l'))
        const columns = columnsOf([...rows(above, 'a'), ...list]).flat()
        const parts = columns.map((c) => c.filter((t) => /^l\d/.test(t))).filter((c) => c.length > 0)
        for (const part of parts) expect(part.length, `${above} ${length}`).toBeGreaterThan(1)
        const headed = columns.find((c) => c.includes('L'))!
        expect(headed.slice(headed.indexOf('L'), headed.indexOf('L') + 4)).toEqual(['L', 'intro', 'l1', 'l2'])
      }
  })
})
