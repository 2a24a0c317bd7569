import type { SymbolDrawing } from '../model/kind'
import type { Mark } from '../model/marks'
import { plain } from './caption'
import { circle, cutTo, dot, line, rect, text, textWidth } from './draw'
import { type BlockLayout, PITCH, rowY, BLOCK_W as W, type Ways } from './ways'

const BAR_X = 3.75
const TEXT_X = 15

/** Drawing of a block: feed bar, a row for each way, and the return bar below them. */
export function blockSymbol(ways: Ways, returnBar: boolean, o: BlockLayout): SymbolDrawing {
  const n = ways.length
  const h = PITCH * (Math.max(o.feeds, returnBar ? 2 * n : n) + 0.5)
  return {
    w: W,
    h,
    marks: [
      rect(1.25, 0.25, W - 2.5, h - 0.5, { pen: 'thin' }),
      ...Array.from({ length: o.feeds }, (_, i) => line([0, rowY(i), BAR_X, rowY(i)])),
      feedBar(Math.max(n, o.feeds), o.bolted),
      ...ways.flatMap((way, i) => wayMarks(rowY(i), i + 1, way, o.bolted)),
      ...(returnBar ? returnMarks(n) : []),
    ],
  }
}

const feedBar = (rows: number, bolted: boolean): Mark =>
  bolted
    ? rect(BAR_X - 1.25, rowY(0) - 1.5, 2.5, rowY(rows - 1) - rowY(0) + 3, { pen: 'strong', fill: 'tint' })
    : line([BAR_X, rowY(0), BAR_X, rowY(rows - 1)], { pen: 'bar' })

/** Way number, fuse, rating and label above the lead of the way. */
function wayMarks(y: number, n: number, way: Ways[number], bolted: boolean): readonly Mark[] {
  const rating = way.ratingA === null ? '–' : `${plain(way.ratingA)} A`
  const labelX = TEXT_X + Math.max(textWidth('40 A'), textWidth(rating)) + 1
  return [
    line([BAR_X, y, W, y]),
    rect(7.5, y - 1, 5, 2),
    ...(bolted ? [circle(BAR_X, y, 0.6, { fill: 'paper' }), circle(13.75, y, 0.6, { fill: 'paper' })] : []),
    text(5.5, y - 0.7, `${n}`),
    text(TEXT_X, y - 0.7, rating, { weight: 'bold' }),
    text(labelX, y - 0.7, cutTo(W - 2 - labelX, way.label)),
  ]
}

function returnMarks(n: number): readonly Mark[] {
  const x = W - 7.5
  return [
    line([0, rowY(n), x, rowY(n)]),
    text(TEXT_X, rowY(n) - 0.7, 'return bar'),
    line([x, rowY(n), x, rowY(2 * n - 1)], { pen: 'bar' }),
    dot(x, rowY(n)),
    ...Array.from({ length: n }, (_, i) => [
      line([x, rowY(n + i), W, rowY(n + i)]),
      circle(x, rowY(n + i), 0.6, { fill: 'paper' }),
      text(W - 2, rowY(n + i) - 0.7, `${i + 1}`, { anchor: 'end' }),
    ]).flat(),
  ]
}
