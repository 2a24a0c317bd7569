import { defineKind } from '../model/kind'
import { loadFields, loadParts } from './consumer'
import { arrow, rect } from './draw'

export const load = defineKind({
  ...loadParts([rect(7.5, 2.5, 5, 7.5, { fill: 'paper' }), ...arrow(10, 4, 10, 8.5)]),
  key: 'load',
  title: 'Load',
  letter: 'E',
  about: 'Anything that takes current and has no kind of its own.',
  words: ['consumer', 'appliance', 'heater', 'generic', 'device', 'radio'],
  fields: loadFields(),
})
