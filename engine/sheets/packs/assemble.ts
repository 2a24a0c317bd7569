import type { Sheet } from '../sheet'
import { type Bookmark, sectionBookmark } from './bookmarks'
import { contentsPages } from './contentspage'
import { numbered } from './pagenumber'
import { PACK_READERS, type PackContext, type PackReader, type PackSection } from './section'

/** All that goes into one PDF. */
export interface Pack {
  readonly title: string
  readonly sheets: readonly Sheet[]
  readonly bookmarks: readonly Bookmark[]
}

/** A section as it stands in a pack, with its sheets made. */
export interface MadeSection {
  readonly section: PackSection
  readonly sheets: readonly Sheet[]
}

/** Makes one section. What goes wrong in it is told with its name. */
export function makeSection(section: PackSection, context: PackContext): MadeSection {
  try {
    return { section, sheets: section.sheets(context) }
  } catch (error) {
    throw new Error(`${section.title}: ${error instanceof Error ? error.message : String(error)}`, {
      cause: error,
    })
  }
}

/**
 * Sections as one pack: covers, the contents page, the others in the order given; links and page numbers of the whole.
 * Sections without sheets are left out. Pure. Cost: that of the sheets.
 */
export function assemble(reader: PackReader, made: readonly MadeSection[], context: PackContext): Pack {
  const filled = made.filter((m) => m.sheets.length > 0)
  const covers = filled.filter((m) => m.section.cover)
  const others = filled.filter((m) => !m.section.cover)
  const before = pagesIn(covers)
  const contents = (pages: number) =>
    contentsPages(context.design, reader, outline(others, before + pages), context.paper)
  // How many sheets the contents take does not hang on where they lead.
  const pages = contents(0).length
  const front: MadeSection = {
    section: { key: 'contents', title: 'Contents', readers: [], sheets: () => [] },
    sheets: contents(pages),
  }
  const bookmarks = [...outline([...covers, front], 0), ...outline(others, before + pages)]
  const pageOf = (key: string): number | undefined => {
    const i = others.findIndex((m) => m.section.key === key)
    return bookmarks[i === -1 ? -1 : covers.length + 1 + i]?.page
  }
  const shifted = [...covers, ...others].flatMap(({ sheets }, i) =>
    sheets.map((s) => shiftedBy(s, bookmarks[i < covers.length ? i : i + 1]!.page, pageOf)),
  )
  const sheets = [...shifted.slice(0, before), ...front.sheets, ...shifted.slice(before)]
  return {
    title: PACK_READERS[reader],
    sheets: sheets.map((s, i) => numbered(s, i + 1, sheets.length)),
    bookmarks,
  }
}

const pagesIn = (made: readonly MadeSection[]): number => made.reduce((sum, m) => sum + m.sheets.length, 0)

function outline(made: readonly MadeSection[], first: number): Bookmark[] {
  let page = first
  return made.map(({ section, sheets }) => {
    const bookmark = sectionBookmark(section.title, sheets, page)
    page += sheets.length
    return bookmark
  })
}

function shiftedBy(sheet: Sheet, pages: number, pageOf: (section: string) => number | undefined): Sheet {
  if (sheet.links.length === 0) return sheet
  const links = sheet.links.flatMap(({ section, ...link }) => {
    const first = section === undefined ? pages : pageOf(section)
    return first === undefined ? [] : [{ ...link, sheet: link.sheet + first }]
  })
  return { ...sheet, links }
}
