import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { choice, count, counted, number } from './field'
import { fittingField } from './fitting'
import { breakingFields } from './fuse'
import { STRIP_CLASSES, STRIP_RATINGS } from './fuseboltin'
import { blockSymbol } from './wayrows'
import { type BlockLayout, blockModel, blockTerminals, waysField } from './ways'

const feeds = count('Feed studs', 'Studs of the bar itself, for feeds and links to further bars.', 2, 1, 8)

interface LayoutValues extends Pick<BlockLayout, 'feedFitting' | 'wayFitting'> {
  readonly feeds: number | null
}

const layout = (v: LayoutValues): BlockLayout => ({
  feeds: counted(v.feeds, feeds),
  feedFitting: v.feedFitting,
  wayFitting: v.wayFitting,
  bolted: true,
})

export const fuseBar = defineKind({
  key: 'fuse-bar',
  title: 'Distribution bar with fuses',
  group: 'distribution',
  letter: 'F',
  about: 'A high-current bar with a bolt-in fuse for each way, close to the batteries.',
  words: ['busbar', 'main distribution', 'bolt-in', 'strip fuse', 'high current', 'fused bar'],
  fields: {
    ways: waysField('way', STRIP_RATINGS, 4, 12),
    feeds,
    class: choice(
      'Fuses',
      'Form and standard of the fuses: decides how fast they clear.',
      STRIP_CLASSES,
      'sf51',
    ),
    ratingA: number('Bar rating', 'A', 'Greatest current that may pass along the bar for long.', {
      required: true,
      standard: [250, 300, 400, 500, 600, 1000],
    }),
    wayMaxA: number('Largest fuse', 'A', 'Largest fuse that one way may hold.'),
    ...breakingFields({ voltageV: 32, breakingKA: null }),
    feedFitting: fittingField('M10', 'Feeds fastened by'),
    wayFitting: fittingField('M8', 'Ways fastened by'),
  },
  terminals: (v) => blockTerminals(v.ways, false, layout(v)),
  electrical: (v) => blockModel(v.ways, false, layout(v)),
  symbol: (v) => blockSymbol(v.ways, false, layout(v)),
  caption: (v) => captions([`${v.ways.length} ways`, figure(v.ratingA, 'A')]),
})
