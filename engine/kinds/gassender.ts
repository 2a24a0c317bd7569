import { defineKind, NOTHING } from '../model/kind'
import { captions } from './caption'
import { circle, line } from './draw'
import { choice } from './field'
import { SENDER_X, SENDER_Y, senderFields, senderSymbol, senderTerminals } from './sender'

const USES = { bottle: 'Bottle level', leak: 'Leak' }

export const gasSender = defineKind({
  key: 'gas-sender',
  title: 'Gas sender',
  group: 'data',
  letter: 'B',
  about: 'Reports the level of a gas bottle, or a leak. Nothing that can spark goes into a gas locker.',
  words: ['LPG', 'gas', 'propane', 'bottle', 'leak', 'sensor'],
  fields: {
    use: choice('Reports', 'What it watches.', USES, 'bottle'),
    ...senderFields('wireless'),
  },
  terminals: senderTerminals,
  electrical: () => NOTHING,
  // A gas bottle with its valve.
  symbol: (v) =>
    senderSymbol(v.data, [
      line(
        [
          SENDER_X - 1.25,
          SENDER_Y + 2.25,
          SENDER_X - 1.25,
          SENDER_Y - 0.5,
          SENDER_X - 0.5,
          SENDER_Y - 1.25,
          SENDER_X + 0.5,
          SENDER_Y - 1.25,
          SENDER_X + 1.25,
          SENDER_Y - 0.5,
          SENDER_X + 1.25,
          SENDER_Y + 2.25,
        ],
        { closed: true },
      ),
      line([SENDER_X, SENDER_Y - 1.25, SENDER_X, SENDER_Y - 2.25]),
      circle(SENDER_X, SENDER_Y + 0.75, 0.4, { fill: 'ink', pen: 'thin' }),
    ]),
  caption: (v) => captions(USES[v.use].toLowerCase()),
})
