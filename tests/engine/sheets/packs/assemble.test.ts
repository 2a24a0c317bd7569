import { describe, expect, test } from 'vitest'
import {
  analyse,
  assemble,
  type Bookmark,
  type Design,
  makeSection,
  makingOf,
  PACK_READERS,
  PACK_SECTIONS,
  type Pack,
  type PackReader,
  type PaperSize,
  SCHEDULES,
  type Sheet,
  sectionsNamed,
  usualContents,
} from '../../../../engine/index'
import { design as build } from '../../../build'
import { Random } from '../../../reference/random'
import { trailer } from '../../../scenarios/demos/trailer'
import { type Manner, randomDesign } from '../../rules/randomdesign'

const READERS = Object.keys(PACK_READERS) as PackReader[]

function packOf(design: Design, reader: PackReader, keys: readonly string[], paper: PaperSize = 'A3'): Pack {
  const context = { design, ...analyse(design), paper, view: 'both-poles' } as const
  return assemble(
    reader,
    sectionsNamed(keys).map((s) => makeSection(s, context)),
    context,
  )
}

const words = (sheet: Sheet): string[] => sheet.marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))
const flat = (bookmarks: readonly Bookmark[]): Bookmark[] => bookmarks.flatMap((b) => [b, ...flat(b.under)])

/** What is true of every pack: pages numbered through, bookmarks and links inside it, figures that are figures. */
function holds({ sheets, bookmarks }: Pack): void {
  sheets.forEach((sheet, i) => {
    expect(words(sheet)).toContain(`Page ${i + 1} / ${sheets.length}`)
    for (const { sheet: to } of sheet.links) expect(sheets[to], `${sheet.title} → ${to}`).toBeDefined()
    for (const m of sheet.marks)
      for (const n of m.is === 'line' ? m.points.flat() : m.at) expect(Number.isFinite(n)).toBe(true)
  })
  const pages = flat(bookmarks).map((b) => b.page)
  for (const page of pages) expect(sheets[page]).toBeDefined()
  expect(pages).toEqual([...pages].sort((a, b) => a - b))
}

describe('random designs', () => {
  test.each(
    (['wild', 'sensible'] as Manner[]).flatMap((manner) =>
      [1, 2, 3, 4].map((seed) => [manner, seed] as const),
    ),
  )('%s, %i: every document is made, and the pack of them holds together', (manner, seed) => {
    const design = randomDesign(new Random(seed), 6 + 4 * seed, manner)
    const all = PACK_SECTIONS.map((s) => s.key)
    const pack = packOf(design, READERS[seed % READERS.length]!, all, seed % 2 ? 'A4' : 'A3')
    holds(pack)
    expect(pack.counts.get('schematic')).toBeGreaterThan(0)
  })
})

test('an empty design has its packs all the same', () => {
  for (const reader of READERS) holds(packOf(build().build(), reader, usualContents(reader)))
})

describe('contents', () => {
  const design = trailer()

  test('stand in the order that is asked for, each once', () => {
    const { bookmarks } = packOf(design, 'workshop', ['labels', 'fuses', 'labels', 'schematic'])
    expect(bookmarks.map((b) => b.title)).toEqual(['Contents', 'Labels', 'Fuse chart', 'Schematic'])
  })

  test('a section that there is not is refused', () =>
    expect(() => packOf(design, 'workshop', ['poem'])).toThrow(RangeError))

  test('a section that has nothing to say is left out', () => {
    const none = build().part('battery', 'G1').build()
    const pack = packOf(none, 'workshop', ['schematic', 'fuses'])
    expect(pack.bookmarks.map((b) => b.title)).toEqual(['Contents', 'Schematic'])
    expect(pack.counts.has('fuses')).toBe(false)
  })

  test('short tables share a sheet, and each is found by its bookmark', () => {
    const pack = packOf(design, 'workshop', ['lugs', 'fuses', 'switches'])
    expect(pack.sheets.length).toBe(2)
    expect(pack.bookmarks.map((b) => [b.title, b.page])).toEqual([
      ['Contents', 0],
      ['Lugs, ferrules and sleeves', 1],
      ['Fuse chart', 1],
      ['Relays and switches', 1],
    ])
  })

  test('a fault in a section is told with its name', () => {
    const [schematic] = sectionsNamed(['schematic'])
    const broken = {
      ...schematic!,
      sheets: () => {
        throw new Error('no ink')
      },
    }
    const context = { design, ...analyse(design), paper: 'A4', view: 'single-line' } as const
    expect(() => makeSection(broken, context)).toThrow('Schematic: no ink')
  })
})

describe('the customer’s pack', () => {
  const words = ({ marks }: Sheet): string[] => marks.flatMap((m) => (m.is === 'text' ? [m.text] : []))
  const inLanguage = (language: string) =>
    packOf({ ...trailer(), handover: { language } }, 'customer', usualContents('customer'))

  test('is headed and numbered in the language of the handover', () => {
    const german = inLanguage('de')
    const pages = german.sheets.length
    for (const [i, s] of german.sheets.entries()) expect(words(s)).toContain(`Seite ${i + 1} / ${pages}`)
    const titles = german.bookmarks.map((b) => b.title)
    expect(titles).toContain('Inhalt')
    expect(titles).toContain('Leben mit der Anlage')
    expect(inLanguage('en').bookmarks.map((b) => b.title)).toContain('Contents')
  })

  test('says on its cover on which page each chapter begins', () => {
    const { sheets } = inLanguage('en')
    const [cover] = sheets
    expect(cover!.links).toHaveLength(13)
    for (const [i, { sheet, number }] of cover!.links.entries()) {
      expect(words(sheets[sheet]!).some((t) => t.startsWith(`${i + 1}. `))).toBe(true)
      const there = cover!.marks.find(
        (m) => m.is === 'text' && m.at[0] === number!.at[0] && m.at[1] === number!.at[1],
      )
      expect(there).toMatchObject({ text: `${sheet + 1}`, anchor: 'end' })
    }
  })
})

test('sections of schedules go by key and title of their schedules', () => {
  const design = trailer()
  const { answers } = analyse(design)
  for (const { key, title, of } of SCHEDULES) {
    const schedule = of(design, answers, makingOf(design))
    expect([schedule.key, schedule.title]).toEqual([key, title])
  }
})

test('keys and titles of sections are told apart', () => {
  for (const of of ['key', 'title'] as const)
    expect(new Set(PACK_SECTIONS.map((s) => s[of])).size).toBe(PACK_SECTIONS.length)
})
