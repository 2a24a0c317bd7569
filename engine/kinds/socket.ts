import { defineKind } from '../model/kind'
import { LOAD_X, LOAD_Y, loadFields, loadParts } from './consumer'
import { arc, line } from './draw'

export const socket = defineKind({
  ...loadParts([
    line([LOAD_X, 2.5, LOAD_X, 3.75]),
    line([LOAD_X, 10, LOAD_X, 8.75]),
    arc(LOAD_X, LOAD_Y, 2.5, 0, 0),
  ]),
  key: 'socket',
  title: 'Socket outlet',
  letter: 'X',
  about: 'An outlet for what is plugged in; its figure is what may be drawn from it at most.',
  words: ['outlet', 'USB', 'plug', 'accessory', 'power point'],
  fields: loadFields({ continuous: false }),
})
