import { defineKind } from '../model/kind'
import { LOAD_R, LOAD_X, LOAD_Y, loadParts } from './consumer'
import { circle, line } from './draw'
import { loadFields } from './loadfields'

const D = LOAD_R * Math.SQRT1_2

export const lamp = defineKind({
  ...loadParts([
    circle(LOAD_X, LOAD_Y, LOAD_R, { fill: 'paper' }),
    line([LOAD_X - D, LOAD_Y - D, LOAD_X + D, LOAD_Y + D]),
    line([LOAD_X - D, LOAD_Y + D, LOAD_X + D, LOAD_Y - D]),
  ]),
  key: 'lamp',
  title: 'Lamp',
  letter: 'E',
  about: 'A light, or a group of lights on one circuit.',
  words: ['light', 'LED', 'lighting', 'strip'],
  fields: loadFields(),
})
