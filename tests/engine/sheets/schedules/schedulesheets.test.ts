import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  analyse,
  cellText,
  type Design,
  type PageForm,
  type Sheet,
  scheduleSheets,
  schedulesOf,
  type TextMark,
  widthOf,
} from '../../../../engine/index'
import type { FlowBlock } from '../../../../engine/sheets/flow'
import { setTables } from '../../../../engine/sheets/schedules/settables'
import type { TableBlocks } from '../../../../engine/sheets/schedules/tableblocks'
import { DEMOS } from '../../../scenarios/demos/all'
import { benchDesign } from './bench'

const FORMS: readonly PageForm[] = ['A4-portrait', 'A3-landscape']

const texts = ({ marks }: Sheet): TextMark[] => marks.filter((m) => m.is === 'text')

/** Edges of a text from its anchor, and its band of height. */
function extent(t: TextMark): { left: number; right: number; top: number; bottom: number } {
  const w = widthOf(t.text, t.height, t.weight)
  const left = t.at[0] - (t.anchor === 'end' ? w : t.anchor === 'middle' ? w / 2 : 0)
  return { left, right: left + w, top: t.at[1] - t.height, bottom: t.at[1] }
}

/** Words that stand over one another, but for a hair. */
function overlaps(sheet: Sheet): string[] {
  const all = texts(sheet)
    .filter((t) => t.text.trim() !== '')
    .map((t) => ({ t, e: extent(t) }))
    .sort((a, b) => a.e.top - b.e.top)
  const found: string[] = []
  all.forEach((a, i) => {
    for (let k = i + 1; k < all.length && all[k]!.e.top < a.e.bottom - 0.05; k++) {
      const b = all[k]!
      if (a.e.left < b.e.right - 0.05 && b.e.left < a.e.right - 0.05) found.push(`${a.t.text} | ${b.t.text}`)
    }
  })
  return found
}

const sheetsOf = (design: Design, form: PageForm) => scheduleSheets(design, analyse(design).answers, { form })

function check(sheets: readonly Sheet[], form: PageForm): void {
  const [w, h] = form === 'A4-portrait' ? [210, 297] : [420, 297]
  for (const sheet of sheets) {
    expect([sheet.w, sheet.h]).toEqual([w, h])
    expect(overlaps(sheet)).toEqual([])
    for (const t of texts(sheet)) {
      expect(t.height).toBeGreaterThanOrEqual(1.8)
      const e = extent(t)
      // Margins of ISO 5457; letters and numerals of the fields stand in a strip of 5 mm outside the frame.
      expect(e.left, t.text).toBeGreaterThanOrEqual(15)
      expect(e.right, t.text).toBeLessThanOrEqual(w - 5)
      expect(e.bottom, t.text).toBeLessThanOrEqual(h - 5)
    }
  }
}

describe.each(FORMS)('schedule sheets on %s', (form) => {
  for (const { file, make } of DEMOS)
    it(`${file}: nothing overlaps, nothing leaves the frame, every conductor and schedule is there`, () => {
      const design = make()
      const sheets = sheetsOf(design, form)
      check(sheets, form)
      const words = sheets.flatMap((s) => texts(s).map((t) => t.text))
      for (const c of design.conductors) expect(words).toContain(c.number)
      for (const s of schedulesOf(design, analyse(design).answers)) expect(words).toContain(s.title)
      sheets.forEach((s, i) => {
        expect(texts(s).map((t) => t.text)).toContain(`${i + 1} of ${sheets.length}`)
      })
    })

  it('says the heads of a table again where it goes on', () => {
    const sheets = sheetsOf(DEMOS[0]!.make(), form)
    const going = sheets.filter((s) => texts(s).some((t) => t.text === 'Conductors (continued)'))
    expect(going.length).toBeGreaterThan(1)
    for (const s of going) expect(texts(s).filter((t) => t.text === 'From part')).toHaveLength(1)
  })

  it('carries the cautions on every sheet', () => {
    for (const s of sheetsOf(benchDesign(), form))
      expect(texts(s).some((t) => t.text.startsWith('Isolate every source'))).toBe(true)
  })

  it('takes an empty design and any words that are typed', () => {
    const empty = { ...benchDesign(), parts: [], conductors: [] }
    check(sheetsOf(empty, form), form)
    const text = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.constant('x'.repeat(300)),
      fc.constant('ä '.repeat(99)),
    )
    fc.assert(
      fc.property(text, text, (name, remark) => {
        const d = benchDesign()
        const design: Design = {
          ...d,
          parts: d.parts.map((p, i) => (i % 2 ? p : { ...p, name, location: remark })),
          conductors: d.conductors.map((c, i) => (i === 3 ? { ...c, remark, number: `W${name}` } : c)),
        }
        check(sheetsOf(design, form), form)
      }),
      { numRuns: 12 },
    )
  })
})

it('numbers go on from the sheets before them', () => {
  const design = benchDesign()
  const sheets = scheduleSheets(design, analyse(design).answers, { first: 5, of: 9 })
  expect(sheets[0]!.title).toMatch(/^5 /)
  expect(texts(sheets[0]!).map((t) => t.text)).toContain('5 of 9')
})

it('prints no cell otherwise than the table says', () => {
  const design = benchDesign()
  const { answers } = analyse(design)
  const words = scheduleSheets(design, answers, { form: 'A3-landscape' }).flatMap((s) =>
    texts(s).map((t) => t.text.replaceAll('\u00a0', ' ')),
  )
  const [conductors] = schedulesOf(design, answers)
  for (const row of conductors!.rows)
    for (const column of conductors!.columns) {
      const text = cellText(row.cells[column.key]!, column)
      if (text.length < 14) expect(words.join('\n')).toContain(text)
    }
})

it('the last row of a band is not parted from the one before it', () => {
  const piece = (text: string, h = 10): FlowBlock => ({
    h,
    marks: [{ is: 'text', at: [0, 0], text, height: 2.5 }],
  })
  const rows = Array.from({ length: 30 }, (_, i) => piece(`r${i}`))
  const table: TableBlocks = {
    title: 'T',
    head: () => piece('head'),
    rows,
    band: (i) => piece(`b${Math.floor(i / 3)}`),
    begins: rows.map((_, i) => i % 3 === 0),
    cramped: false,
  }
  for (let h = 60; h <= 200; h += 10) {
    const pages = setTables([{ table, columns: 1 }], { x: 0, y: 0, w: 100, h }).map((page) =>
      page.marks.flatMap((m) => (m.is === 'text' ? [m.text] : [])),
    )
    expect(pages.flat().filter((t) => t.startsWith('r'))).toEqual(rows.map((_, i) => `r${i}`))
    for (const page of pages) {
      expect(page.length * 10).toBeLessThanOrEqual(h)
      const first = Number(page.find((t) => t.startsWith('r'))!.slice(1))
      expect(first % 3, `${h}: r${first}`).not.toBe(2)
    }
  }
})
