import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { choice, flag, number } from './field'
import { fittingField } from './fitting'
import { breakingFields } from './fuse'
import { blockSymbol } from './wayrows'
import { type BlockLayout, blockModel, blockTerminals, waysField } from './ways'

const layout = (v: Pick<BlockLayout, 'feedFitting' | 'wayFitting'>): BlockLayout => ({
  feeds: 1,
  feedFitting: v.feedFitting,
  wayFitting: v.wayFitting,
  bolted: false,
})

export const fuseBlock = defineKind({
  key: 'fuse-block',
  title: 'Fuse block',
  group: 'distribution',
  letter: 'F',
  about: 'One feed, many fused ways, one way for each load; with or without a return bar.',
  words: ['fuse panel', 'fuse box', 'fuse holder', 'ways', 'blade', 'distribution'],
  fields: {
    ways: waysField('way', [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40], 6, 30),
    class: choice(
      'Fuses',
      'Form and standard of the fuses: decides how fast they clear.',
      { c: 'Blade (ISO 8820-3 type C)', f: 'Miniature blade (ISO 8820-3 type F)', other: 'Other' },
      'c',
    ),
    returnBar: flag('Return bar', 'The block has a return bar with a screw for each way.'),
    ratingA: number('Block rating', 'A', 'Greatest current of the whole block.', { required: true }),
    wayMaxA: number('Largest fuse', 'A', 'Largest fuse that one way may hold.', { initial: 30 }),
    ...breakingFields({ voltageV: 32, breakingKA: 1 }),
    feedFitting: fittingField('M6', 'Feed fastened by'),
    wayFitting: fittingField('M4', 'Ways fastened by'),
  },
  terminals: (v) => blockTerminals(v.ways, v.returnBar, layout(v)),
  electrical: (v) => blockModel(v.ways, v.returnBar, layout(v)),
  symbol: (v) => blockSymbol(v.ways, v.returnBar, layout(v)),
  caption: (v) => captions([`${v.ways.length} ways`, figure(v.ratingA, 'A')]),
})
