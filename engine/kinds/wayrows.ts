import type { SymbolDrawing } from '../model/kind'
import type { Mark } from '../model/marks'
import { circle, cutTo, dot, line, rect, text } from './draw'
import {
  type BlockLayout,
  blockWidth,
  EDGE,
  labelX,
  PITCH,
  RATING_X,
  ratingWords,
  rowY,
  type Ways,
} from './ways'

const BAR_X = 3.75
/** Way numbers stand between bar and fuse: room for two digits. */
const NUMBER_X = 5.5
const FUSE = { x: 9.75, w: 5.5, h: 2.2 } as const

/** Drawing of a block: feed bar, a row for each way, and the return bar below them. */
export function blockSymbol(ways: Ways, returnBar: boolean, o: BlockLayout): SymbolDrawing {
  const n = ways.length
  const w = blockWidth(ways)
  const h = PITCH * (Math.max(o.feeds, returnBar ? 2 * n : n) + 0.5)
  return {
    w,
    h,
    marks: [
      rect(1.25, 0.25, w - 2.5, h - 0.5, { pen: 'thin' }),
      ...ways.flatMap((_, i) => wayMarks(rowY(i), w, o.bolted)),
      ...feedBar(Math.max(n, o.feeds), n, o.bolted),
      ...Array.from({ length: o.feeds }, (_, i) => feedMarks(rowY(i), o.bolted)).flat(),
      ...ways.flatMap((way, i) => wayWords(rowY(i), w, i + 1, way, labelX(ways))),
      ...(returnBar ? returnMarks(n, w) : []),
    ],
  }
}

const feedBar = (rows: number, ways: number, bolted: boolean): readonly Mark[] =>
  bolted
    ? [
        rect(BAR_X - 1.25, rowY(0) - 1.5, 2.5, rowY(rows - 1) - rowY(0) + 3, { pen: 'strong', fill: 'tint' }),
        ...Array.from({ length: ways }, (_, i) => circle(BAR_X, rowY(i), 0.6, { fill: 'paper' })),
      ]
    : [line([BAR_X, rowY(0) - 1.5, BAR_X, rowY(rows - 1) + 1.5], { pen: 'bar' })]

/** A feed ends at the bar: on a stud of its own, or at the side of a bar that shows the studs of its ways. */
const feedMarks = (y: number, bolted: boolean): readonly Mark[] =>
  bolted
    ? [line([0, y, BAR_X - 1.25, y], { pen: 'strong' })]
    : [line([0, y, BAR_X, y], { pen: 'strong' }), circle(BAR_X, y, 0.9, { fill: 'paper', pen: 'strong' })]

/** The lead of a way from the bar through the middle of its fuse. */
function wayMarks(y: number, w: number, bolted: boolean): readonly Mark[] {
  const stud = FUSE.x + FUSE.w + 1
  return [
    line([BAR_X, y, w, y]),
    rect(FUSE.x, y - FUSE.h / 2, FUSE.w, FUSE.h),
    ...(bolted ? [circle(stud, y, 0.6, { fill: 'paper' })] : []),
  ]
}

/** Way number, rating and label above the lead. */
const wayWords = (y: number, w: number, n: number, way: Ways[number], x: number): readonly Mark[] => [
  text(NUMBER_X, y - 0.7, `${n}`),
  text(RATING_X, y - 0.7, ratingWords(way), { weight: 'bold' }),
  text(x, y - 0.7, cutTo(w - EDGE - x, way.label)),
]

function returnMarks(n: number, w: number): readonly Mark[] {
  const x = w - 7.5
  return [
    line([0, rowY(n), x, rowY(n)]),
    text(RATING_X, rowY(n) - 0.7, 'return bar'),
    line([x, rowY(n), x, rowY(2 * n - 1)], { pen: 'bar' }),
    dot(x, rowY(n)),
    ...Array.from({ length: n }, (_, i) => [
      line([x, rowY(n + i), w, rowY(n + i)]),
      circle(x, rowY(n + i), 0.6, { fill: 'paper' }),
      text(w - EDGE, rowY(n + i) - 0.7, `${i + 1}`, { anchor: 'end' }),
    ]).flat(),
  ]
}
