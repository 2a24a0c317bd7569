import type { ValueOf } from '../model/fields'
import type { Electrical, SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { Amps } from '../units'
import { plain } from './caption'
import { circle, cutTo, dot, line, rect, text, textWidth } from './draw'
import { number, rows, words } from './field'
import { fuseOhms } from './resistance'
import { terminal } from './terminal'

/** Ways of fuse blocks and of bars with bolt-in fuses: a feed bar on the left, one fuse and one terminal a way. */

export const waysField = (each: string, ratings: readonly Amps[], initial: number, max: number) =>
  rows(
    'Ways',
    each,
    'One row for each way, in the order of the block: the fuse that is fitted and what it feeds.',
    {
      ratingA: number('Fuse', 'A', 'Rated current of the fuse in this way. Empty: not chosen yet.', {
        standard: ratings,
      }),
      label: words('Label', 'What this way feeds; printed on the fuse chart and the label.'),
    },
    initial,
    max,
  )
export type Ways = ValueOf<ReturnType<typeof waysField>>

export interface BlockLayout {
  /** Feed terminals on the left, from the top. */
  readonly feeds: number
  readonly feedStud: string
  readonly wayStud: string
  /** Bolt-in fuses on a flat bar; otherwise fuses that are pushed in. */
  readonly bolted: boolean
}

const W = 45
const PITCH = 5
const BAR_X = 3.75
const TEXT_X = 15

/** The text of a row stands above its line, so the first line is a pitch below the top. */
const rowY = (row: number): number => PITCH * (row + 1)
const feedKeys = (o: BlockLayout): readonly string[] =>
  Array.from({ length: o.feeds }, (_, i) => (o.feeds === 1 ? 'in' : `in${i + 1}`))

/** Feeds on the left; ways on the right; below them the return bar: its way out on the left, a screw a way on the right. */
export function blockTerminals(ways: Ways, returnBar: boolean, o: BlockLayout): readonly Terminal[] {
  const n = ways.length
  const feeds = feedKeys(o).map((key, i) =>
    terminal('left', 0, rowY(i), key, o.feeds === 1 ? 'feed' : `feed ${i + 1}`, 'positive', {
      use: 'in',
      stud: o.feedStud,
    }),
  )
  const outs = ways.map((_, i) =>
    terminal('right', W, rowY(i), `${i + 1}`, `way ${i + 1}`, 'positive', {
      mark: `${i + 1}`,
      use: 'out',
      stud: o.wayStud,
    }),
  )
  if (!returnBar) return [...feeds, ...outs]
  return [
    ...feeds,
    ...outs,
    terminal('left', 0, rowY(n), 'return', 'return bar, common', 'negative', {
      use: 'out',
      stud: o.feedStud,
    }),
    ...ways.map((_, i) =>
      terminal('right', W, rowY(n + i), `r${i + 1}`, `return ${i + 1}`, 'negative', {
        mark: `${i + 1}`,
        use: 'in',
        stud: o.wayStud,
      }),
    ),
  ]
}

export function blockModel(ways: Ways, returnBar: boolean, o: BlockLayout): Electrical {
  const feeds = feedKeys(o)
  return {
    merges: [
      ...(feeds.length > 1 ? [feeds] : []),
      ...(returnBar ? [['return', ...ways.map((_, i) => `r${i + 1}`)]] : []),
    ],
    branches: ways.map((way, i) => ({
      key: `${i + 1}`,
      from: feeds[0]!,
      to: `${i + 1}`,
      ohms: fuseOhms(way.ratingA),
      kind: 'fuse',
      ratingA: way.ratingA,
      name: way.label === '' ? `way ${i + 1}` : `way ${i + 1} (${way.label})`,
    })),
    devices: [],
  }
}

export function blockSymbol(ways: Ways, returnBar: boolean, o: BlockLayout): SymbolDrawing {
  const n = ways.length
  const h = PITCH * (Math.max(o.feeds, returnBar ? 2 * n : n) + 0.5)
  return {
    w: W,
    h,
    marks: [
      rect(1.25, 0.25, W - 2.5, h - 0.5, { pen: 'thin' }),
      ...feedKeys(o).map((_, i) => line([0, rowY(i), BAR_X, rowY(i)])),
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
    rect(7.5, y - 1, 5, 2, { fill: 'paper' }),
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
