import { defineKind } from '../model/kind'
import { LOAD_R, LOAD_X, LOAD_Y, loadParts } from './consumer'
import { arrow, rect } from './draw'
import { loadFields } from './loadfields'

export const load = defineKind({
  ...loadParts([
    rect(LOAD_X - 2.5, LOAD_Y - LOAD_R, 5, 2 * LOAD_R, { fill: 'paper' }),
    ...arrow(LOAD_X, LOAD_Y - 2, LOAD_X, LOAD_Y + 2),
  ]),
  key: 'load',
  title: 'Load',
  letter: 'E',
  about: 'Anything that takes current and has no kind of its own.',
  words: ['consumer', 'appliance', 'heater', 'generic', 'device', 'radio'],
  fields: loadFields(),
})
