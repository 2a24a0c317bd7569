import { defineKind, NOTHING } from '../model/kind'
import { captions, known } from './caption'
import { line } from './draw'
import { choice, number } from './field'
import { SENDER_X, SENDER_Y, senderFields, senderSymbol, senderTerminals } from './sender'

const CONTENTS = {
  fresh: 'Fresh water',
  grey: 'Grey water',
  black: 'Black water',
  fuel: 'Fuel',
  other: 'Other',
}

export const tankSender = defineKind({
  key: 'tank-sender',
  title: 'Tank sender',
  group: 'data',
  letter: 'B',
  about: 'Reports the level of a tank.',
  words: ['level', 'tank', 'water', 'fuel', 'gauge', 'sensor'],
  fields: {
    contents: choice('Contents', 'What the tank holds.', CONTENTS, 'fresh'),
    capacityL: number('Tank capacity', 'L', 'Volume of the full tank.'),
    signal: choice(
      'Signal',
      'What it gives; the input of the hub must read the same.',
      { resistance: 'Resistance', voltage: 'Voltage', current: 'Current' },
      'resistance',
    ),
    ...senderFields('wired'),
  },
  terminals: senderTerminals,
  electrical: () => NOTHING,
  symbol: (v) =>
    senderSymbol(v.data, [
      line([
        SENDER_X - 2,
        SENDER_Y - 1.75,
        SENDER_X - 2,
        SENDER_Y + 1.75,
        SENDER_X + 2,
        SENDER_Y + 1.75,
        SENDER_X + 2,
        SENDER_Y - 1.75,
      ]),
      line([SENDER_X - 2, SENDER_Y, SENDER_X + 2, SENDER_Y]),
      line([SENDER_X - 1, SENDER_Y + 0.85, SENDER_X + 1, SENDER_Y + 0.85]),
    ]),
  caption: (v) => captions([CONTENTS[v.contents].toLowerCase(), known(v.capacityL, 'L')]),
})
