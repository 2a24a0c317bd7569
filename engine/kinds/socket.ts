import { defineKind } from '../model/kind'
import { loadParts } from './consumer'
import { arc, line, text } from './draw'
import { loadFields } from './loadfields'

export const socket = defineKind({
  ...loadParts([]),
  key: 'socket',
  title: 'Socket outlet',
  letter: 'X',
  about: 'An outlet for what is plugged in; its figure is what may be drawn from it at most.',
  words: ['outlet', 'USB', 'plug', 'accessory', 'power point'],
  fields: loadFields({ continuous: false, fitting: 'blade 6.3' }),
  // Two female contacts that open towards the plug, linked as one outlet.
  symbol: () => ({
    w: 15,
    h: 12.5,
    marks: [
      ...[2.5, 10].flatMap((y) => [line([0, y, 9, y]), arc(11, y, 2, 90, 270)]),
      line([9, 2.5, 9, 10], { pen: 'thin', dash: true }),
      text(1.25, 2, '+', { anchor: 'middle' }),
      text(1.25, 9.5, '−', { anchor: 'middle' }),
    ],
  }),
})
