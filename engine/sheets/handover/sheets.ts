import { remembering } from '../../math/remember'
import type { Design } from '../../model/design'
import type { Book, Chapter } from '../../words/handover/book'
import type { ChapterKey } from '../../words/handover/language'
import { handoverBook } from '../../words/handover/make'
import { type FlowBlock, type FlowPage, flow } from '../flow'
import type { Area } from '../paper'
import type { Sheet } from '../sheet'
import { coverSheet } from './cover'
import { AREA, PAGE, pageMarks } from './page'
import { pieceBlocks } from './pieces'
import { scaled } from './scaled'
import { CHAPTER, leading, lines } from './type'

/** Chapters that go on where the one before ends; every other begins a page. */
const RUN_ON: readonly (ChapterKey | 'own')[] = ['own', 'tests', 'contacts']

/** Those that do so where the page has room for all of them. */
const FILL_UP: readonly (ChapterKey | 'own')[] = [
  'picture',
  'places',
  'everyday',
  'storage',
  'care',
  'drawing',
]

/** The cover alone; its lines lead to the chapters where those are in the pack. */
export function handoverCover(design: Design): readonly Sheet[] {
  const sheets = handoverSheets(design)
  const { cover, chapters } = handoverBook(design)
  const pageOf = (number: number): number => {
    const chapter = chapters.find((c) => c.number === number)
    return sheets.findIndex((s) => chapter && s.title.split(BETWEEN).includes(titleOf(chapter)))
  }
  return [coverSheet(cover, pageOf)]
}

/** The chapters as upright A4 pages in large type. Made once for each design; costs its facts the first time. */
export const handoverSheets = remembering((design: Design): readonly Sheet[] =>
  runsOf(handoverBook(design)).flatMap((run) => runSheets(design, run)),
)

/** Chapters that share pages. */
function runsOf({ chapters }: Book): Chapter[][] {
  const runs: Chapter[][] = []
  for (const chapter of chapters) {
    const last = runs.at(-1)
    if (last && (RUN_ON.includes(chapter.is) || fillsUp(last, chapter))) last.push(chapter)
    else runs.push([chapter])
  }
  return runs
}

function fillsUp(run: readonly Chapter[], chapter: Chapter): boolean {
  if (!FILL_UP.includes(chapter.is) || run.some((c) => c.is === 'emergency' || c.is === 'finder'))
    return false
  const pages = (of: readonly Chapter[]): number => setAt(of).pages.length
  return pages([...run, chapter]) === pages(run)
}

/** Sizes at which a run of chapters is set: a little smaller where that spares a page with hardly anything on it. */
const SIZES = [1, 0.95, 0.9, 0.86] as const
const HARDLY = 0.4

/** A page carries the tab of every chapter that stands on it, and is called by those that begin on it. */
function runSheets(design: Design, run: readonly Chapter[]): Sheet[] {
  const { pages, size } = setAt(run)
  let current = run[0]!
  return pages.map((page) => {
    const begun = run.filter((c) => page.titles.includes(c.key))
    const goesOn = begun.includes(current) || startsAtTop(page) ? [] : [current]
    const named = begun.length > 0 ? begun : [current]
    current = begun.at(-1) ?? current
    return {
      title: named.map(titleOf).join(BETWEEN),
      w: PAGE.w,
      h: PAGE.h,
      marks: [...pageMarks(design, [...goesOn, ...begun]), ...scaled(page.marks, size, AREA.x, AREA.y)],
      links: [],
    }
  })
}

const BETWEEN = ' · '

/** The first thing on a page is the title of a chapter. */
const startsAtTop = ({ marks }: FlowPage): boolean => {
  const tops = marks.flatMap((m) => (m.is === 'text' ? [{ y: m.at[1] - m.height, height: m.height }] : []))
  const first = tops.reduce((a, b) => (b.y < a.y ? b : a), { y: Number.POSITIVE_INFINITY, height: 0 })
  return first.height === CHAPTER
}

function setAt(run: readonly Chapter[]): { readonly pages: readonly FlowPage[]; readonly size: number } {
  const at = (size: number) => {
    const area = { x: 0, y: 0, w: AREA.w / size, h: AREA.h / size }
    const blocks = run.flatMap((chapter, i) => chapterBlocks(chapter, i, area))
    return { pages: flow(blocks, area, 1), size, h: area.h }
  }
  const usual = at(1)
  if (usual.pages.length < 2 || filled(usual.pages.at(-1)!) > HARDLY * usual.h) return usual
  const fewer = SIZES.slice(1).map(at)
  return fewer.find((set) => set.pages.length < usual.pages.length) ?? usual
}

/** How far down a page reaches, mm. */
const filled = ({ marks }: FlowPage): number =>
  Math.max(0, ...marks.map((m) => (m.is === 'line' ? Math.max(...m.points.map((p) => p[1])) : m.at[1])))

/** Title and pieces of a chapter; each block knows by `title` the chapter that begins with it. */
function chapterBlocks(chapter: Chapter, at: number, { w, h }: Area): FlowBlock[] {
  const before = at === 0 ? 0 : 9
  const head =
    chapter.title === ''
      ? []
      : leading(
          lines(titleOf(chapter), w, {
            height: CHAPTER,
            weight: 'bold',
            ink: chapter.is === 'emergency' ? 'danger' : 'ink',
            before,
            after: 4,
          }),
        )
  const pieces = chapter.pieces.flatMap((piece, i) => {
    const blocks = pieceBlocks(piece, w, h - 30)
    return piece.is === 'text' && chapter.pieces[i + 1]?.is === 'rows' ? leading(blocks) : blocks
  })
  const blocks = [...head, ...pieces]
  return blocks.map((block, i) => (i === 0 ? { ...block, title: chapter.key } : block))
}

const titleOf = ({ number, title }: Chapter): string => (number === null ? title : `${number}. ${title}`)
