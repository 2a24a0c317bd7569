import { defineKind, NOTHING } from '../model/kind'
import { captions } from './caption'
import { letter } from './draw'
import { words } from './field'
import { SENDER_X, SENDER_Y, senderFields, senderSymbol, senderTerminals } from './sender'

export const temperatureSender = defineKind({
  key: 'temperature-sender',
  title: 'Temperature sender',
  group: 'data',
  letter: 'B',
  about: 'Reports a temperature: of a battery, a fridge, a cabin.',
  words: ['temperature', 'thermometer', 'probe', 'sensor'],
  fields: {
    of: words('Of', 'What it measures: battery, fridge, outside.'),
    ...senderFields('wired'),
  },
  terminals: senderTerminals,
  electrical: () => NOTHING,
  symbol: (v) => senderSymbol(v.data, [letter(SENDER_X, SENDER_Y, 't°', 2.5)]),
  caption: (v) => captions(v.of),
})
