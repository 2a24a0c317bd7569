import { defineKind } from '../model/kind'
import { captions, figure, known } from './caption'
import { letter } from './draw'
import { number } from './field'
import { batteryDevice, batteryFields, batteryName, batteryResults, batterySymbol, postsOf } from './store'

export const startingBattery = defineKind({
  key: 'starting-battery',
  title: 'Starting battery',
  group: 'stores',
  letter: 'G',
  about: "The vehicle's own battery, which starts the engine.",
  words: ['starter', 'cranking', 'vehicle', 'engine', 'crank'],
  fields: {
    ...batteryFields('flooded', 'post M8'),
    crankingA: number(
      'Cold cranking current',
      'A',
      'Printed on the battery; sets what a breaker must interrupt.',
      {
        group: 'Fault',
      },
    ),
  },
  terminals: postsOf,
  electrical: (v) => ({ merges: [], branches: [], devices: [batteryDevice(v)] }),
  results: batteryResults,
  symbol: () => batterySymbol([letter(13.5, 6.25, 'S', 2.5)]),
  caption: (v) =>
    captions(
      [`starting, ${batteryName(v)}`],
      [figure(v.capacityAh, 'Ah'), `${v.volts} V`, known(v.crankingA, 'A')],
    ),
})
