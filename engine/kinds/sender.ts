import type { SymbolDrawing, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { PlugKey } from '../tables/plugs'
import { plugField, plugged, waves } from './datalink'
import { circle, line } from './draw'
import { choice } from './field'
import { standing } from './sign'
import { terminal } from './terminal'

/** Senders of tank level, temperature and gas: one lead to an input of the hub, or by radio. */

const SENDER_LINKS = { wired: 'Wired input', wireless: 'Wireless' } as const
export type SenderLink = keyof typeof SENDER_LINKS

export const senderFields = (initial: SenderLink) => ({
  data: choice(
    'Data link',
    'How the hub reaches it: an input of its type, or its radio.',
    SENDER_LINKS,
    initial,
  ),
  // Senders come with a lead of their own. Common practice, no source.
  signalPlug: plugField('moulded', 'End of its signal lead'),
})

const W = 12.5
const H = 10
const Y = 5

export const senderTerminals = (v: {
  readonly data: SenderLink
  readonly signalPlug: PlugKey
}): readonly Terminal[] =>
  v.data === 'wired' ? [terminal('left', 0, Y, 'signal', 'signal', 'data', plugged(v.signalPlug))] : []

/** Middle of the circle that holds the drawing of a sender. */
export const SENDER_X = 7.5
export const SENDER_Y = 5

export const senderSymbol = (link: SenderLink, marks: readonly Mark[]): SymbolDrawing => ({
  w: W,
  h: H,
  marks: [
    circle(SENDER_X, SENDER_Y, 3.75),
    ...(link === 'wired' ? [line([0, Y, SENDER_X - 3.75, Y], { ink: 'data' })] : waves(2, 3.5)),
    ...standing(SENDER_X, SENDER_Y, marks),
  ],
})
