import { defineKind } from '../model/kind'
import { fuseFields, fuseParts } from './fuse'

export const fuseLargeBlade = defineKind({
  ...fuseParts(),
  key: 'fuse-large-blade',
  title: 'Large blade fuse',
  about: 'A single large blade fuse in a holder, 20 A to 120 A.',
  words: ['fuse', 'blade', 'in-line', 'holder'],
  fields: fuseFields({
    classes: { e: 'Large blade (DIN 72581-3 form E)', other: 'Other' },
    usual: 'e',
    // DIN 72581-3, as restated in public.
    ratings: [20, 30, 40, 50, 60, 70, 80, 100, 120],
    voltageV: 32,
    breakingKA: null,
    fitting: 'blade 8',
  }),
})
