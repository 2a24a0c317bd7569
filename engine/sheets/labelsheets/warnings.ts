import type { Design, Part } from '../../model/design'
import { listed } from '../../words/names'
import { titleOf } from '../schedules/ends'
import { hasWays } from '../schedules/fusechart'
import type { Label, LabelSign } from './label'

/** What has to be known before it is touched. Common practice, no source; local codes may ask for other words. */
const WARNINGS: Readonly<Record<string, readonly [head: string, text: string, sign: LabelSign]>> = {
  battery: [
    'BATTERY',
    'Thousands of amps in a short circuit. Insulate tools, take off rings and watches.',
    'W001',
  ],
  'starting-battery': ['BATTERY', 'Thousands of amps in a short circuit. Insulate tools.', 'W001'],
  'pv-array': ['PV ARRAY', 'Live in daylight, switched off or not. Cover it or disconnect it first.', 'W001'],
  'solar-controller': ['PV INPUT', 'Live in daylight. Disconnect the array before the battery.', 'W001'],
  inverter: ['MAINS', 'Makes mains voltage from the battery. Licensed persons only.', 'W012'],
  'inverter-charger': ['MAINS', 'Two supplies: battery and shore. Licensed persons only.', 'W012'],
  'mains-charger': ['MAINS', 'Unplug the shore supply before work. Licensed persons only inside.', 'W012'],
  'mains-inlet': ['MAINS', 'Licensed persons only.', 'W012'],
  'mains-distribution': ['MAINS', 'May be fed by an inverter as well. Licensed persons only.', 'W012'],
  'mains-load': ['MAINS', 'Licensed persons only.', 'W012'],
  isolator: ['ISOLATOR', 'Turn off in an emergency, and before work. Chargers and PV stay live.', 'W001'],
}

/** What goes on feeding a system whose isolators are off. */
const SOURCES = ['pv-array', 'alternator', 'alternator-charger', 'mains-charger', 'inverter-charger']

/** Warnings for parts, a caution for each block of fuses, and how the whole is isolated. Parts in order. */
export const warningsOf = ({ parts: all }: Design, parts: readonly Part[]): readonly Label[] => [
  ...parts.flatMap(warning),
  ...parts.filter(hasWays).map(fuses),
  ...(all.some((p) => p.kind === 'battery') ? [isolate(parts)] : []),
]

function warning(part: Part): Label[] {
  const words = WARNINGS[part.kind]
  if (!words) return []
  const [head, text, sign] = words
  return [
    caution(`${part.id}/warning`, `on ${titleOf(part)}`, [`${head} ${part.designation}`, text], [part], sign),
  ]
}

const fuses = (part: Part): Label =>
  caution(
    `${part.id}/fuses`,
    `on ${titleOf(part)}`,
    [
      `FUSES ${part.designation}`,
      'Replace a fuse by one of the same rating and form only. Find out why it opened.',
    ],
    [part],
  )

function isolate(parts: readonly Part[]): Label {
  const named = (kinds: readonly string[]) =>
    parts.filter((p) => kinds.includes(p.kind)).map((p) => p.designation)
  const [off, stay] = [named(['isolator']), named(SOURCES)]
  const first = off.length > 0 ? `Turn off ${listed(off, 4)}.` : 'Take out the fuses at the batteries.'
  const then = stay.length > 0 ? ` Then cut off what still feeds: ${listed(stay, 6)}.` : ''
  const lines = ['ISOLATE BEFORE WORK', `${first}${then} Prove it dead.`]
  return caution('isolate', 'at the batteries', lines, [], 'W001')
}

const caution = (
  key: string,
  place: string,
  lines: readonly string[],
  parts: readonly Part[],
  sign?: LabelSign,
): Label => ({
  ...{ key, kind: 'warning', place, lines, conductors: [] },
  ...(sign ? { sign } : {}),
  parts: parts.map((p) => p.id),
})
