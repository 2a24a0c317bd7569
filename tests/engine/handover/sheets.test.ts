import { expect, test } from 'vitest'
import type { Mark } from '../../../engine/model/marks'
import { AREA, PAGE } from '../../../engine/sheets/handover/page'
import { handoverCover, handoverSheets } from '../../../engine/sheets/handover/sheets'
import { widthOf } from '../../../engine/sheets/measure'
import type { Sheet } from '../../../engine/sheets/sheet'
import { HANDOVER_LANGUAGES } from '../../../engine/words/handover/languages'
import { design } from '../../build'
import { Random } from '../../reference/random'
import { DEMOS } from '../../scenarios/demos/all'
import { randomDesign } from '../rules/randomdesign'

type Box = readonly [left: number, top: number, right: number, bottom: number]

function boxOf(mark: Mark): Box {
  if (mark.is === 'line') {
    const [xs, ys] = [mark.points.map((p) => p[0]), mark.points.map((p) => p[1])]
    return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)]
  }
  const [x, y] = mark.at
  if (mark.is !== 'text') return [x - mark.r, y - mark.r, x + mark.r, y + mark.r]
  const w = widthOf(mark.text, mark.height, mark.weight)
  const left = mark.anchor === 'middle' ? x - w / 2 : mark.anchor === 'end' ? x - w : x
  return [left, y - mark.height, left + w, y + mark.height * 0.3]
}

/** Everything inside the sheet, and nothing on the lowest 8 mm, where the pack writes its page number. */
function fits(sheet: Sheet): void {
  for (const mark of sheet.marks) {
    const [left, top, right, bottom] = boxOf(mark)
    expect([sheet.title, mark, left >= 0 && top >= 0]).toEqual([sheet.title, mark, true])
    expect([sheet.title, mark, right <= PAGE.w && bottom <= PAGE.h - 8]).toEqual([sheet.title, mark, true])
  }
}

const words = (sheet: Sheet): string[] => sheet.marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))

test.each(DEMOS.map((d) => [d.title, d.make()] as const))('%s: pages hold what is on them', (_, d) => {
  for (const language of Object.keys(HANDOVER_LANGUAGES)) {
    const spoken = { ...d, handover: { language } }
    const sheets = [...handoverCover(spoken), ...handoverSheets(spoken)]
    sheets.forEach(fits)
    for (const { marks, w, h } of sheets) {
      expect([w, h]).toEqual([210, 297])
      // Type that still reads when the page is as wide as a telephone; the head and foot of the page may be smaller.
      const body = marks.filter((m) => m.is === 'text' && m.at[1] > AREA.y && m.at[1] < AREA.y + AREA.h)
      for (const m of body) if (m.is === 'text') expect(m.height).toBeGreaterThanOrEqual(2.1)
    }
  }
})

test('no page ends with a heading, and none begins with the last line of a paragraph', () => {
  const long = 'A long word of the installer that fills some lines of the page. '.repeat(40)
  for (let n = 1; n <= 40; n++) {
    const paragraphs = [
      { id: 'h1', heading: 'First', text: long.slice(0, 120 * n), after: 'contacts' },
      { id: 'h2', heading: 'Second', text: long.slice(0, 300), after: 'contacts' },
    ]
    const sheets = handoverSheets({ ...design().build(), handover: { paragraphs } })
    for (const sheet of sheets) {
      const inside = sheet.marks
        .filter((m) => m.is === 'text' && m.at[1] > AREA.y && m.at[1] < AREA.y + AREA.h)
        .sort((a, b) => boxOf(a)[1] - boxOf(b)[1])
      const last = inside.at(-1)
      expect([n, last?.is === 'text' && ['First', 'Second'].includes(last.text)]).toEqual([n, false])
      expect(inside.length).toBeGreaterThan(1)
    }
  }
})

test('a paragraph longer than a page goes on overleaf, every word of it', () => {
  const text = Array.from({ length: 1500 }, (_, i) => `w${i}`).join(' ')
  const paragraphs = [{ id: 'h1', heading: 'Long', text, after: null }]
  const sheets = handoverSheets({ ...design().build(), handover: { paragraphs } })
  sheets.forEach(fits)
  const found = sheets.flatMap(words).join(' ')
  for (let i = 0; i < 1500; i++) expect(found.includes(`w${i}`)).toBe(true)
})

test('lines of the cover lead to the page on which their chapter begins', () => {
  const d = DEMOS[0]!.make()
  const [cover] = handoverCover(d)
  const sheets = handoverSheets(d)
  expect(cover!.links).toHaveLength(13)
  cover!.links.forEach((link, i) => {
    expect(link.section).toBe('handover')
    expect(words(sheets[link.sheet]!).some((t) => t.startsWith(`${i + 1}. `))).toBe(true)
  })
})

test('any design makes pages', () => {
  const random = new Random(3)
  for (let i = 0; i < 40; i++) {
    const made = randomDesign(random, 4 + 3 * i, i % 2 === 0 ? 'sensible' : 'wild')
    for (const sheet of [...handoverCover(made), ...handoverSheets(made)]) fits(sheet)
  }
})

test('names as long as the file may hold leave the front page its way to every chapter', () => {
  const long = 'Unbrokenverylongname'.repeat(10)
  const named = { name: long, customer: long, vehicle: long, designer: long, installer: long, revision: long }
  const d = design({ ...named, revision: long.slice(0, 40), date: long.slice(0, 40), contact: long }).build()
  const [cover] = handoverCover(d)
  fits(cover!)
  expect(cover!.links?.length).toBeGreaterThan(10)
  for (const link of cover!.links ?? []) expect(link.y + link.h).toBeLessThan(PAGE.h - 8)
  expect(words(cover!).some((w) => w.endsWith('…'))).toBe(true)
})
