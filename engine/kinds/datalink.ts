import type { Side, Terminal } from '../model/kind'
import type { Mark } from '../model/marks'
import { PLUG_TITLES, type PlugKey } from '../tables/plugs'
import type { Millimetres } from '../units'
import { arc, line } from './draw'
import { choice } from './field'
import { terminal } from './terminal'

/** How a part reaches the monitor: a wired port of a hub or expander, by radio, or not at all. */
const LINKS = { wired: 'Wired port', wireless: 'Wireless', none: 'None' } as const
export type Link = keyof typeof LINKS

export const linkFields = (initial: Link) => ({
  data: choice(
    'Data link',
    'How the monitor reaches it; each wired one takes a port of its own.',
    LINKS,
    initial,
    { group: 'Data' },
  ),
  dataPlug: plugField(),
})

/** What the lead has at this end: makers differ, so none is taken for granted. */
export const plugField = (initial: PlugKey = 'unknown', label = 'Plug of its data lead') =>
  choice(
    label,
    'What the data lead needs at this end, from the data sheet: printed in the list of terminals.',
    PLUG_TITLES,
    initial,
    { group: 'Data' },
  )

/** Form of a data port, for the list of terminals. */
export const plugged = (plug: PlugKey): Pick<Terminal, 'stud' | 'takes'> =>
  plug === 'unknown' ? { takes: 1 } : { stud: plug, takes: 1 }

/** The data port of a part whose link is wired. */
export const linkTerminal = (
  link: Link,
  side: Side,
  x: Millimetres,
  y: Millimetres,
  plug: PlugKey,
): readonly Terminal[] =>
  link === 'wired' ? [terminal(side, x, y, 'data', 'data port', 'data', plugged(plug))] : []

/** The lead of a wired port down from the top edge, or the waves of a wireless one. */
export const linkMarks = (link: Link, x: Millimetres, length: Millimetres): readonly Mark[] =>
  link === 'wired' ? [line([x, 0, x, length], { ink: 'data' })] : link === 'wireless' ? waves(x, length) : []

/** Two arcs that spread upwards from a point. */
export const waves = (x: Millimetres, y: Millimetres): readonly Mark[] => [
  arc(x, y, 0.9, 215, 325),
  arc(x, y, 1.8, 215, 325),
]
