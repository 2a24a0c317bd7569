import { defineKind, NOTHING } from '../model/kind'
import { captions, known } from './caption'
import { arrow } from './draw'
import { number } from './field'
import { MAINS_H, mainsSymbol } from './mainsbox'
import { alternatingSign } from './sign'
import { terminal } from './terminal'

export const mainsLoad = defineKind({
  key: 'mains-load',
  title: 'Mains load group',
  group: 'mains',
  letter: 'E',
  about: 'Outlets and appliances on one mains circuit. For licensed persons only; not sized here.',
  words: ['AC load', 'outlet', 'appliance', 'GPO', 'mains'],
  fields: { powerW: number('Power', 'W', 'Power of the group, for the record.') },
  terminals: () => [terminal('left', 0, 5, 'in', 'mains supply', 'mains', { mark: '~', use: 'in' })],
  electrical: () => NOTHING,
  symbol: () =>
    mainsSymbol(MAINS_H, [{ side: 'left', y: 5 }], [...alternatingSign(6.5, 5), ...arrow(9.5, 5, 13.5, 5)]),
  caption: (v) => captions(['mains', known(v.powerW, 'W')]),
})
