import type { Design } from '../../../engine/model/design'
import { boards } from './boards'
import { cabin } from './cabin'
import { mistakes } from './mistakes'
import { trailer } from './trailer'
import { truck } from './truck'
import { vetVan } from './vetvan'

/** A demo design that comes with the product, with the words of the list that offers it. */
export interface DemoSource {
  readonly file: string
  readonly title: string
  readonly about: string
  readonly make: () => Design
}

/** The first one is what the editor opens on. */
export const DEMOS: readonly DemoSource[] = [
  {
    file: 'veterinary-van.json',
    title: 'Mobile veterinary van',
    about:
      'Two batteries with room for a third, three arrays, an inverter-charger, two shunts, five fuse blocks.',
    make: vetVan,
  },
  {
    file: 'planted-mistakes.json',
    title: 'The same van with planted mistakes',
    about: 'Twenty-eight things are wrong. Find them, see why, and mend them.',
    make: mistakes,
  },
  {
    file: 'training-boards.json',
    title: 'Training boards',
    about: 'Thirty-three small circuits, each with one thing wrong: a finding at a time, to learn from.',
    make: boards,
  },
  {
    file: 'camping-trailer.json',
    title: 'Camping trailer, ten loads',
    about: 'A small 12 V system to learn on.',
    make: trailer,
  },
  {
    file: 'expedition-truck.json',
    title: 'Expedition truck, 24 V',
    about: 'Three batteries in parallel on a ring of bars, and a 12 V side.',
    make: truck,
  },
  {
    file: 'mountain-cabin.json',
    title: 'Mountain cabin, 48 V',
    about: 'A string of four batteries in series, American wire gauge.',
    make: cabin,
  },
]
