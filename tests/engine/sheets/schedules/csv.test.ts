import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  analyse,
  cellText,
  csvOf,
  type Schedule,
  type ScheduleCell,
  schedulesOf,
} from '../../../../engine/index'
import { DEMOS } from '../../../scenarios/demos/all'
import { benchDesign } from './bench'
import { readCsv } from './readcsv'

const table = (...cells: ScheduleCell[]): Schedule => ({
  key: 'test',
  title: 'Test',
  columns: [{ key: 'a', title: 'Length', unit: 'm', align: 'start', wide: 5, decimals: 2 }],
  rows: cells.map((a, i) => ({ key: `${i}`, name: '', cells: { a }, parts: [], conductors: [] })),
  notes: [],
})

/** Cells of the one column, read back. */
const readBack = (...cells: ScheduleCell[]): string[] =>
  readCsv(csvOf(table(...cells)).slice(1))
    .slice(1)
    .map(([first]) => first!)

describe('CSV', () => {
  it('begins with a byte order mark, heads its columns with their units, ends its lines with CR LF', () => {
    expect(csvOf(table('x', 2.5))).toBe('\ufeffLength (m),"Not known, because"\r\nx,\r\n2.5,\r\n')
  })

  // The list of first characters: OWASP, "CSV Injection", as the guidance is known; from memory.
  it.each([
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n=1',
    '=HYPERLINK("http://x","y")',
    "=cmd|'/c x'!A1",
  ])('keeps %j from being a formula', (text) => expect(readBack(text)).toEqual([`'${text}`]))

  it('leaves figures alone, below nought as well, and text that only holds such signs', () => {
    expect(csvOf(table(-2.5, 12))).toContain('\r\n-2.5,\r\n12,\r\n')
    expect(readBack('a=b', 'G1:+', '2+3', '−5', '–')).toEqual(['a=b', 'G1:+', '2+3', '−5', '–'])
  })

  it('gives a dash for what is not known, and says why at the end of the row', () => {
    expect(readCsv(csvOf(table({ notKnown: 'no size, no length' })).slice(1))[1]).toEqual([
      '–',
      'no size, no length',
    ])
  })

  it('gives back any text', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ unit: 'grapheme' }), { maxLength: 5 }), (texts) => {
        expect(readBack(...texts)).toEqual(texts.map((t) => (/^[=+\-@\t\r\n]/.test(t) ? `'${t}` : t)))
      }),
    )
    expect(readBack('a "b", c\r\nd', ' x ')).toEqual(['a "b", c\r\nd', ' x '])
  })

  it('tames what a designer typed: remark, name and label', () => {
    const conductors = schedulesOf(benchDesign(), analyse(benchDesign()).answers)[0]!
    expect(csvOf(conductors)).toContain(",'=1+1,")
  })

  for (const { file, make } of DEMOS)
    it(`${file}: every schedule is read back cell by cell`, () => {
      const design = make()
      for (const s of schedulesOf(design, analyse(design).answers)) {
        const [head, ...records] = readCsv(csvOf(s).slice(1))
        expect(head).toHaveLength(s.columns.length + 1)
        expect(records).toHaveLength(s.rows.length)
        records.forEach((record, i) => {
          s.columns.forEach((c, k) => {
            const cell = s.rows[i]!.cells[c.key]!
            if (typeof cell === 'number') expect(Number(record[k])).toBe(cell)
            else expect(record[k]!.replace(/^'(?=[=+\-@])/, '')).toBe(cellText(cell, c))
          })
        })
      }
    })
})
