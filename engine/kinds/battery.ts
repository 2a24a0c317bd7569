import { defineKind } from '../model/kind'
import { captions, figure } from './caption'
import { flag } from './field'
import { batteryDevice, batteryFields, batteryName, batteryResults, batterySymbol, postsOf } from './store'

export const battery = defineKind({
  key: 'battery',
  title: 'Battery',
  group: 'stores',
  letter: 'G',
  about: 'A battery of the house system; wire several in parallel or in series for a bank.',
  words: ['accumulator', 'lithium', 'LiFePO4', 'AGM', 'gel', 'lead-acid', 'house', 'bank', 'cell'],
  fields: {
    ...batteryFields('lfp', 'M8'),
    ownCutOff: flag(
      'Disconnects itself',
      'The battery has an electronic disconnect of its own; it does not take the place of a fuse.',
      { group: 'Behaviour' },
    ),
  },
  terminals: postsOf,
  electrical: (v) => ({ merges: [], branches: [], devices: [batteryDevice(v)] }),
  results: batteryResults,
  symbol: () => batterySymbol(),
  caption: (v) => captions(batteryName(v), [figure(v.capacityAh, 'Ah'), `${v.volts} V`]),
})
