import { defineKind } from '../model/kind'
import { fuseFields, fuseParts } from './fuse'

export const fuseBlade = defineKind({
  ...fuseParts(),
  key: 'fuse-blade',
  title: 'Blade fuse',
  about: 'A single blade fuse in a holder, for small circuits.',
  words: ['fuse', 'blade', 'in-line', 'holder'],
  fields: fuseFields({
    classes: {
      c: 'Blade (ISO 8820-3 type C)',
      f: 'Miniature blade (ISO 8820-3 type F)',
      other: 'Other',
    },
    usual: 'c',
    // Ratings and colours: DIN 72581-3 and ISO 8820, as restated in public.
    ratings: [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40],
    voltageV: 32,
    // From memory: 1 kA at 32 V is the usual figure of the class.
    breakingKA: 1,
    fitting: 'blade 6.3',
  }),
})
