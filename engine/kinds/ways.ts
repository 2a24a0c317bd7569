import type { ValueOf } from '../model/fields'
import type { Electrical, Terminal } from '../model/kind'
import type { FittingKey } from '../tables/fittings'
import type { Amps, Millimetres } from '../units'
import { plain } from './caption'
import { textWidth } from './draw'
import { flag, number, rows, words } from './field'
import { fastened } from './fitting'
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
      locked: flag(
        'Locked',
        'The rating of this way is the designer\'s own choice: "Size it" leaves it as it is.',
      ),
    },
    initial,
    max,
  )
export type Ways = ValueOf<ReturnType<typeof waysField>>

export interface BlockLayout {
  /** Feed terminals on the left, from the top. */
  readonly feeds: number
  readonly feedFitting: FittingKey
  readonly wayFitting: FittingKey
  /** Bolt-in fuses on a flat bar; otherwise fuses that are pushed in. */
  readonly bolted: boolean
}

export const PITCH = 5
/** Where the ratings begin: right of bar, way number and fuse. */
export const RATING_X = 17
/** Clear of the right edge of the box. */
export const EDGE = 2
/** Width of a box with short labels, and of the widest: longer labels are cut. */
const WIDTHS = { least: 45, most: 75 } as const
const GRID = 2.5

export const ratingWords = ({ ratingA }: Ways[number]): string =>
  ratingA === null ? '–' : `${plain(ratingA)} A`

/** Where the labels begin, one below the other. */
export const labelX = (ways: Ways): Millimetres =>
  RATING_X + Math.max(textWidth('40 A'), ...ways.map((way) => textWidth(ratingWords(way)))) + 1

/** Width of the box: what its longest label needs, on the grid. */
export function blockWidth(ways: Ways): Millimetres {
  const wanted = labelX(ways) + Math.max(0, ...ways.map((way) => textWidth(way.label))) + EDGE
  return Math.min(WIDTHS.most, Math.max(WIDTHS.least, Math.ceil(wanted / GRID) * GRID))
}

/** The text of a row stands above its line, so the first line is a pitch below the top. */
export const rowY = (row: number): number => PITCH * (row + 1)

const feedKeys = (o: BlockLayout): readonly string[] =>
  Array.from({ length: o.feeds }, (_, i) => (o.feeds === 1 ? 'in' : `in${i + 1}`))

/** Feeds on the left; ways on the right; below them the return bar: its way out on the left, a screw a way on the right. */
export function blockTerminals(ways: Ways, returnBar: boolean, o: BlockLayout): readonly Terminal[] {
  const n = ways.length
  const feeds = feedKeys(o).map((key, i) =>
    terminal('left', 0, rowY(i), key, o.feeds === 1 ? 'feed' : `feed ${i + 1}`, 'positive', {
      use: 'in',
      ...fastened(o.feedFitting),
    }),
  )
  const w = blockWidth(ways)
  const outs = ways.map((_, i) =>
    terminal('right', w, rowY(i), `${i + 1}`, `way ${i + 1}`, 'positive', {
      mark: `${i + 1}`,
      use: 'out',
      ...fastened(o.wayFitting),
    }),
  )
  if (!returnBar) return [...feeds, ...outs]
  return [
    ...feeds,
    ...outs,
    terminal('left', 0, rowY(n), 'return', 'return bar, common', 'negative', {
      use: 'out',
      ...fastened(o.feedFitting),
    }),
    ...ways.map((_, i) =>
      terminal('right', w, rowY(n + i), `r${i + 1}`, `return ${i + 1}`, 'negative', {
        mark: `${i + 1}`,
        use: 'in',
        ...fastened(o.wayFitting),
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
