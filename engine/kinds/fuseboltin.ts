import { defineKind } from '../model/kind'
import { circle } from './draw'
import { fuseFields, fuseParts } from './fuse'

/** Ratings of ISO 8820-5 strips, A; from memory. */
export const STRIP_RATINGS = [
  30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
]

export const STRIP_CLASSES = {
  sf30: 'Bolt-in strip, 30 mm between holes (ISO 8820-5 SF30)',
  sf51: 'Bolt-in strip, 51 mm between holes (ISO 8820-5 SF51)',
  other: 'Other bolt-in',
} as const

export const fuseBoltIn = defineKind({
  ...fuseParts([circle(2.5, 2.5, 0.6, { fill: 'paper' }), circle(12.5, 2.5, 0.6, { fill: 'paper' })]),
  key: 'fuse-bolt-in',
  title: 'Bolt-in fuse',
  about: 'A fuse strip between two studs, for high currents near the batteries.',
  words: ['fuse', 'bolt', 'strip', 'stud', 'main fuse'],
  fields: fuseFields({
    classes: STRIP_CLASSES,
    usual: 'sf51',
    ratings: STRIP_RATINGS,
    voltageV: 32,
    breakingKA: null,
    fitting: 'M8',
  }),
})
