import { defineKind } from '../model/kind'
import { LOAD_R, LOAD_X, LOAD_Y, loadParts } from './consumer'
import { circle, letter, outline } from './draw'
import { loadFields } from './loadfields'

const D = LOAD_R * Math.SQRT1_2

export const pump = defineKind({
  ...loadParts([
    circle(LOAD_X, LOAD_Y, LOAD_R, { fill: 'paper' }),
    outline([LOAD_X + D, LOAD_Y - D, LOAD_X + LOAD_R, LOAD_Y, LOAD_X + D, LOAD_Y + D], {
      fill: 'ink',
      pen: 'thin',
    }),
    letter(LOAD_X - 0.7, LOAD_Y, 'M'),
  ]),
  key: 'pump',
  title: 'Pump',
  letter: 'M',
  about: 'A water, waste or fuel pump.',
  words: ['water pump', 'bilge', 'shower', 'fuel pump', 'motor'],
  fields: loadFields({ inrush: 3, inrushS: 0.5, continuous: false }),
})
