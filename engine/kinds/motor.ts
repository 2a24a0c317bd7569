import { defineKind } from '../model/kind'
import { LOAD_R, LOAD_X, LOAD_Y, loadParts } from './consumer'
import { circle, letter } from './draw'
import { loadFields } from './loadfields'
import { directSign, standing } from './sign'

export const motor = defineKind({
  ...loadParts([
    circle(LOAD_X, LOAD_Y, LOAD_R, { fill: 'paper' }),
    ...standing(LOAD_X, LOAD_Y, [letter(LOAD_X, LOAD_Y - 0.7, 'M'), ...directSign(LOAD_X, LOAD_Y + 1.4)]),
  ]),
  key: 'motor',
  title: 'Motor',
  letter: 'M',
  about: 'A motor that starts under load: winch, slide-out, step, jack.',
  words: ['winch', 'actuator', 'slide', 'jack', 'step', 'inrush'],
  fields: loadFields({ inrush: 6, inrushS: 0.5, continuous: false }),
})
