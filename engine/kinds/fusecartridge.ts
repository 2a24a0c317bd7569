import { defineKind } from '../model/kind'
import { line } from './draw'
import { fuseFields, fuseParts } from './fuse'

export const fuseCartridge = defineKind({
  ...fuseParts([line([5.25, 1.25, 5.25, 3.75]), line([9.75, 1.25, 9.75, 3.75])]),
  key: 'fuse-cartridge',
  title: 'Cartridge fuse',
  about: 'A fuse of high breaking capacity, for lithium banks and PV strings.',
  words: ['fuse', 'class T', 'gPV', 'high breaking', 'battery fuse', 'string fuse', 'main fuse'],
  fields: fuseFields({
    classes: {
      t: 'High breaking, class T (UL 248-15)',
      gg: 'General purpose gG (IEC 60269)',
      gpv: 'Photovoltaic gPV (IEC 60269-6)',
      other: 'Other',
    },
    usual: 't',
    // Common practice, no source.
    ratings: [
      1, 2, 4, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32, 40, 50, 60, 63, 70, 80, 100, 110, 125, 150, 160, 175,
      200, 225, 250, 300, 350, 400, 450, 500, 600,
    ],
    voltageV: 125,
    breakingKA: null,
    fitting: 'M8',
  }),
})
