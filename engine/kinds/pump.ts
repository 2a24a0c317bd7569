import { defineKind } from '../model/kind'
import { LOAD_X, LOAD_Y, loadFields, loadParts } from './consumer'
import { circle, letter, outline } from './draw'

const D = 3.75 * Math.SQRT1_2

export const pump = defineKind({
  ...loadParts([
    circle(LOAD_X, LOAD_Y, 3.75, { fill: 'paper' }),
    outline([LOAD_X + D, LOAD_Y - D, LOAD_X + 3.75, LOAD_Y, LOAD_X + D, LOAD_Y + D], {
      fill: 'ink',
      pen: 'thin',
    }),
    letter(LOAD_X - 0.75, LOAD_Y, 'M', 2.5),
  ]),
  key: 'pump',
  title: 'Pump',
  letter: 'M',
  about: 'A water, waste or fuel pump.',
  words: ['water pump', 'bilge', 'shower', 'fuel pump', 'motor'],
  fields: loadFields({ inrush: 3, inrushS: 0.5, continuous: false }),
})
