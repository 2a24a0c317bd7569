import type { Side, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { arc, line } from './draw'
import { choice } from './field'
import { terminal } from './terminal'

/** How a part reaches the monitor: a wired port of a hub or expander, by radio, or not at all. */
const LINKS = { wired: 'Wired port', wireless: 'Wireless', none: 'None' } as const
export type Link = keyof typeof LINKS

export const linkField = (initial: Link) =>
  choice('Data link', 'How the monitor reaches it; each wired one takes a port of its own.', LINKS, initial, {
    group: 'Data',
  })

/** The data port of a part whose link is wired. */
export const linkTerminal = (link: Link, side: Side, x: Millimetres, y: Millimetres): readonly Terminal[] =>
  link === 'wired' ? [terminal(side, x, y, 'data', 'data port', 'data', { takes: 1 })] : []

/** The lead of a wired port down from the top edge, or the waves of a wireless one. */
export const linkMarks = (link: Link, x: Millimetres, length: Millimetres): readonly Mark[] =>
  link === 'wired' ? [line([x, 0, x, length], { ink: 'data' })] : link === 'wireless' ? waves(x, length) : []

/** Two arcs that spread upwards from a point. */
export const waves = (x: Millimetres, y: Millimetres): readonly Mark[] => [
  arc(x, y, 0.9, 215, 325),
  arc(x, y, 1.8, 215, 325),
]
