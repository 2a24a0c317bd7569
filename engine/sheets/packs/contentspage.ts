import { line } from '../../kinds/draw'
import type { Design } from '../../model/design'
import type { Millimetres } from '../../units'
import { LARGE, textMark, USUAL } from '../block'
import { columnWidth, type FlowBlock, type FlowPage, flow, heading, paragraph } from '../flow'
import { AREA, PAGE, pageMarks } from '../handover/page'
import { CHAPTER, leading, lines } from '../handover/type'
import { cutTo, widthOf } from '../measure'
import type { Area, PaperSize } from '../paper'
import { pageOf } from '../schedules/page'
import type { Sheet } from '../sheet'
import type { Bookmark } from './bookmarks'
import { type PackWords, packWords } from './packwords'
import { PACK_READERS, type PackReader } from './section'
import { tableForm } from './tableform'

/** Widest column whose lines the eye can follow to the number, and most columns on one page. */
const WIDEST: Millimetres = 190
const MOST_COLUMNS = 3

/** The contents of a pack, each line a link: sections, and below each its sheets. Links count from the first page of the pack. */
export function contentsPages(
  design: Design,
  reader: PackReader,
  bookmarks: readonly Bookmark[],
  paper: PaperSize,
): readonly Sheet[] {
  if (reader === 'customer') return customersContents(design, bookmarks)
  const page = pageOf(tableForm(paper))
  const w = packWords(reader, design)
  const pages = setIn(bookmarks, w, page.area)
  return pages.map(({ marks, links }, i): Sheet => {
    const words = {
      documentType: PACK_READERS[reader],
      subtitle: w.contents,
      number: i + 1,
      of: pages.length,
      date: design.settings.date,
    }
    return {
      title: w.contents,
      w: page.paper.w,
      h: page.paper.h,
      marks: [...page.base(design, words), ...marks],
      links,
    }
  })
}

/** As the chapters of the handover are set: large, upright, in their language. */
function customersContents(design: Design, bookmarks: readonly Bookmark[]): Sheet[] {
  const w = packWords('customer', design)
  const head = leading(lines(w.contents, AREA.w, { height: CHAPTER, weight: 'bold', after: 4 }))
  const pages = flow([...head, ...blocksOf(bookmarks, w, AREA.w, LARGE)], AREA, 1)
  return pages.map(({ marks, links }) => ({
    title: w.contents,
    w: PAGE.w,
    h: PAGE.h,
    marks: [...pageMarks(design, [{ title: w.contents, number: null }]), ...marks],
    links,
  }))
}

/** In as few columns as one page allows. */
function setIn(bookmarks: readonly Bookmark[], w: PackWords, area: Area): FlowPage[] {
  let pages: FlowPage[] = []
  for (let columns = Math.ceil(area.w / WIDEST); columns <= MOST_COLUMNS; columns++) {
    const width = columnWidth(area, columns)
    pages = flow([heading(w.contents, width), ...blocksOf(bookmarks, w, width, USUAL)], area, columns)
    if (pages.length === 1) break
  }
  return pages
}

function blocksOf(
  bookmarks: readonly Bookmark[],
  w: PackWords,
  width: Millimetres,
  height: Millimetres,
): FlowBlock[] {
  return [
    ...bookmarks.flatMap(({ title, page, under }, i): FlowBlock[] => {
      const own = row(title, page, { width, height, indent: 0, bold: true })
      const sheets = under.every((u) => /^Sheet \d+$/.test(u.title)) ? [] : under
      return [
        ...(bookmarks[i - 1]?.title === w.living
          ? [{ h: height * 2, marks: [] }, heading(w.others, width)]
          : []),
        { ...own, leads: sheets.length > 0 },
        ...sheets.map((u) => row(u.title, u.page, { width, height, indent: 2 * height, bold: false })),
      ]
    }),
    { h: height, marks: [] },
    paragraph(w.attached, width, { height }),
  ]
}

interface RowWords {
  readonly width: Millimetres
  readonly height: Millimetres
  readonly indent: Millimetres
  readonly bold: boolean
}

/** Title, a broken line, number of the page. */
function row(title: string, page: number, { width, height, indent, bold }: RowWords): FlowBlock {
  const number = `${page + 1}`
  const weight = bold ? 'bold' : 'regular'
  const above = bold ? height * 0.9 : 0
  const h = above + height * 1.8
  const baseline = above + height * 1.4
  const numberWidth = widthOf(number, height, weight)
  const words = cutTo(width - indent - numberWidth - 2 * height, title, height, weight)
  const [from, to] = [
    indent + widthOf(words, height, weight) + height * 0.6,
    width - numberWidth - height * 0.6,
  ]
  return {
    h,
    marks: [
      textMark(indent, baseline, { text: words, height, weight }),
      ...(to - from > height
        ? [line([from, baseline, to, baseline], { pen: 'thin', ink: 'faint', dash: true })]
        : []),
      textMark(width, baseline, { text: number, height, weight }, { anchor: 'end' }),
    ],
    links: [{ x: 0, y: above, w: width, h: h - above, sheet: page }],
  }
}
