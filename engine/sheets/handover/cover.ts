import { line, rect } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import type { Cover } from '../../words/handover/book'
import { moved, textMark } from '../block'
import { type FlowBlock, together } from '../flow'
import type { Sheet, SheetLink } from '../sheet'
import { AREA, PAGE } from './page'
import { BODY, CHAPTER, HEAD, lines } from './type'

/** The front page: whose system it is, and where to look first. */
export function coverSheet(cover: Cover, pageOf: (chapter: number) => number): Sheet {
  const { x, w } = AREA
  const find = findBlock(cover, w, pageOf)
  const top = 24
  const room = PAGE.h - 12 - find.h - 8 - top
  // Long names give way to what one looks for in a hurry; they stand in full under "Whom to call".
  const set = LINES.map(([name, row]) => namesBlocks(cover, w, name, row))
  const [title, rows] = set.find(([t, r]) => t.h + r.h <= room) ?? set.at(-1)!
  const below = Math.max(top + title.h + rows.h + 8, PAGE.h - 24 - find.h)
  return {
    title: cover.title,
    w: PAGE.w,
    h: PAGE.h,
    marks: [
      line([x, 17, x + w, 17], { pen: 'bar', ink: 'accent' }),
      ...moved(title.marks, x, top),
      ...moved(rows.marks, x, top + title.h),
      ...moved(find.marks, x, below),
    ],
    links: (find.links ?? []).map((l) => linkMoved(l, x, below)),
  }
}

const linkMoved = ({ number, ...link }: SheetLink, x: Millimetres, y: Millimetres): SheetLink => ({
  ...link,
  x: link.x + x,
  y: link.y + y,
  ...(number ? { number: { ...number, at: [number.at[0] + x, number.at[1] + y] } } : {}),
})

/** Most lines of the name, and of each row below it: as many as they take, or as many as there is room for. */
const LINES = [
  [99, 99],
  [3, 2],
  [2, 1],
] as const

function namesBlocks(
  cover: Cover,
  w: Millimetres,
  name: number,
  row: number,
): readonly [FlowBlock, FlowBlock] {
  const title = together([
    ...lines(cover.title, w, { height: HEAD, ink: 'accent', weight: 'bold', after: 3 }),
    ...lines(cover.name, w, { height: 10, weight: 'bold', after: 3, most: name }),
    ...lines(cover.system, w, { height: HEAD, after: 5 }),
  ])
  return [title, together(cover.rows.flatMap(({ label, value }) => rowBlock(label, value, w, row)))]
}

function rowBlock(label: string, value: string, width: Millimetres, most: number): FlowBlock[] {
  const at = 46
  const right = together(lines(value, width - at, { weight: 'bold', after: 1, most }))
  return [
    {
      h: right.h,
      marks: [...lines(label, at, { ink: 'faint' })[0]!.marks, ...moved(right.marks, at, 0)],
    },
  ]
}

/** "What do you need?": the number of the chapter in a square as on the edge of its pages, and the question. */
function findBlock({ find }: Cover, width: Millimetres, pageOf: (chapter: number) => number): FlowBlock {
  const [urgent, ...others] = find.rows
  const marks: Mark[] = []
  const links: SheetLink[] = []
  const title = together(lines(find.title, width, { height: HEAD, weight: 'bold', after: 2 }))
  marks.push(...title.marks)
  let y = title.h
  const row = (n: number, question: string, h: number, height: number, fill: 'ink' | 'danger') => {
    marks.push(
      rect(0, y, h, h, { pen: 'thin', fill }),
      textMark(
        h / 2,
        y + h / 2 + height / 2,
        { text: `${n}`, height, weight: 'bold', ink: 'paper' },
        { anchor: 'middle' },
      ),
      textMark(h + 5, y + h / 2 + height / 2, {
        text: question,
        height,
        weight: height > BODY ? 'bold' : 'regular',
      }),
    )
    links.push({
      x: 0,
      y,
      w: width,
      h,
      sheet: Math.max(0, pageOf(n)),
      section: 'handover',
      number: { at: [width, y + h / 2 + height / 2], height },
    })
    y += h + 1.4
  }
  if (urgent) row(urgent.chapter, urgent.question, 15, CHAPTER - 1, 'danger')
  for (const { chapter, question } of others)
    row(chapter, question, chapter === 2 ? 13 : 8.2, chapter === 2 ? HEAD : BODY, 'ink')
  return { h: y, marks, links }
}
