import { textMark } from '../block'
import type { Sheet } from '../sheet'
import { type Bookmark, sectionBookmark } from './bookmarks'
import { type Chapter, chaptersOf, type MadeSection } from './chapters'
import { contentsPages } from './contentspage'
import { type PackWords, packWords } from './packwords'
import { numbered } from './pagenumber'
import { PACK_READERS, type PackContext, type PackReader } from './section'

/** All that goes into one PDF. */
export interface Pack {
  readonly title: string
  readonly sheets: readonly Sheet[]
  readonly bookmarks: readonly Bookmark[]
  /** How many pages each section stands on, by its key; none: it has nothing to say. */
  readonly counts: ReadonlyMap<string, number>
}

/**
 * Sections as one pack: covers, the contents page, the others in the order given; links and page numbers of the whole.
 * Sections without sheets are left out. Pure. Cost: that of the sheets.
 */
export function assemble(reader: PackReader, made: readonly MadeSection[], context: PackContext): Pack {
  const w = packWords(reader, context.design)
  const covers = chaptersOf(
    made.filter((m) => m.section.cover),
    context,
  )
  const others = chaptersOf(
    made.filter((m) => !m.section.cover),
    context,
  )
  const before = pagesIn(covers)
  const contents = (pages: number) =>
    contentsPages(context.design, reader, outline(others, before + pages, w), context.paper)
  // How many sheets the contents take does not hang on where they lead.
  const pages = contents(0).length
  const front: Chapter = { sheets: contents(pages), sections: [] }
  const chapters = [...covers, front, ...others]
  const firsts = chapters.map((_, i) => pagesIn(chapters.slice(0, i)))
  const placed = chapters.flatMap(({ sections }, i) =>
    sections.map(({ section, at, count }) => ({ key: section.key, page: firsts[i]! + at, count })),
  )
  const pageOf = (key: string): number | undefined => placed.find((p) => p.key === key)?.page
  const sheets = chapters.flatMap((chapter, i) =>
    chapter === front ? front.sheets : chapter.sheets.map((s) => shiftedBy(s, firsts[i]!, pageOf)),
  )
  return {
    title: PACK_READERS[reader],
    sheets: sheets.map((s, i) => numbered(s, w.page(`${i + 1}`, `${sheets.length}`))),
    bookmarks: [
      ...outline(covers, 0, w),
      sectionBookmark(w.contents, front.sheets, before),
      ...outline(others, before + pages, w),
    ],
    counts: new Map(placed.map((p) => [p.key, p.count])),
  }
}

const pagesIn = (chapters: readonly Chapter[]): number =>
  chapters.reduce((sum, c) => sum + c.sheets.length, 0)

function outline(chapters: readonly Chapter[], first: number, w: PackWords): Bookmark[] {
  let page = first
  return chapters.flatMap(({ sheets, sections }) => {
    const start = page
    page += sheets.length
    return sections.map(({ section, at, count }) => {
      const own = sheets.slice(at, at + count)
      const named = section.schedule ? own.map((s) => ({ ...s, title: section.title })) : own
      return sectionBookmark(section.key === 'handover' ? w.living : section.title, named, start + at)
    })
  })
}

function shiftedBy(sheet: Sheet, pages: number, pageOf: (section: string) => number | undefined): Sheet {
  if (sheet.links.length === 0) return sheet
  const links = sheet.links.flatMap(({ section, ...link }) => {
    const first = section === undefined ? pages : pageOf(section)
    return first === undefined ? [] : [{ ...link, sheet: link.sheet + first }]
  })
  const numbers = links.flatMap(({ sheet: to, number }) =>
    number ? [textMark(...number.at, { text: `${to + 1}`, height: number.height }, { anchor: 'end' })] : [],
  )
  return { ...sheet, marks: [...sheet.marks, ...numbers], links }
}
