import type { Instrument, Probe, Reading, ReadingAsks, TestStep } from '../../calc/commissioning/step'
import { terminalsIn } from '../../edit/terminal'
import type { Design } from '../../model/design'
import { conductorById, partById } from '../../model/lookup'
import { colourName } from '../../tables/colours'
import { listed, partName, terminalWords } from '../names'
import { sizeName } from '../sizing'

export const INSTRUMENT_WORDS: Readonly<Record<Instrument, string>> = {
  eyes: 'By eye',
  hand: 'By hand',
  voltmeter: 'Multimeter, DC volts',
  ohmmeter: 'Multimeter, ohms',
  clamp: 'Clamp meter for direct current',
  display: 'Display of the monitor',
  'adjustable-supply': 'Adjustable DC supply and multimeter',
}

const ASKS: Readonly<Record<ReadingAsks, string>> = {
  so: 'Is it as described?',
  voltage: 'Voltage',
  'voltage-on': 'Voltage behind it, on',
  'voltage-off': 'Voltage behind it, off',
  'fuse-out': 'Voltage behind it, fuse out',
  'isolator-open': 'Voltage behind it, open',
  'isolator-closed': 'Voltage behind it, closed',
  coil: 'Voltage at the coil, on',
  resistance: 'Resistance',
  apart: 'Resistance',
  'apart-frame': 'Resistance to the frame',
  current: 'Current',
  shunt: 'Reading of',
  'shunt-zero': 'Reading of',
  posts: 'Voltage at the battery posts',
  'at-load': 'Voltage at the load',
  'opens-at': 'Opens at, falling',
  'closes-at': 'Closes at, rising',
  'stops-at': 'Stops at, falling',
  'set-at': 'Set to warn at',
}

/** What a reading is: "Voltage behind it, fuse out: way 3 (Pump)", "Reading of B2 Load-side shunt". */
export function readingWords({ asks, name, at }: Reading, design: Design): string {
  const text = ASKS[asks]
  if (asks === 'shunt' || asks === 'shunt-zero') return `${text} ${partName(design, at[0]!.part)}`
  if (asks === 'resistance' || asks === 'apart' || asks === 'apart-frame')
    return `${text}: ${partName(design, at[0]!.part)}`
  return name === undefined ? text : `${text}: ${name}`
}

/** Where to touch, one line a lead: "Red: G1 House battery, positive · battery bay". */
export function probeWords(reading: Reading, design: Design): readonly string[] {
  const { instrument, at, asks } = reading
  if (asks === 'so') return []
  if (instrument === 'display' || instrument === 'adjustable-supply')
    return at.map((p) => placeWords(p, design))
  if (instrument === 'clamp')
    return at.map((p) => `Round ${roundWords(reading, design)}, at ${placeWords(p, design)}`)
  const leads = instrument === 'ohmmeter' ? ['One lead', 'Other lead'] : ['Red lead', 'Black lead']
  const lines = at.map((p, i) => `${leads[i] ?? ''}: ${placeWords(p, design)}`)
  return asks === 'apart-frame' ? [...lines, 'Other lead: bare metal of the frame'] : lines
}

/** "G1 House battery, positive · battery bay" */
function placeWords({ part: id, terminal }: Probe, design: Design): string {
  const part = partById(design, id)
  const known = part && terminal !== null && terminalsIn(part)?.find((t) => t.key === terminal)
  const where = known
    ? `, ${terminalWords(known)}`
    : terminal === null || terminal === ''
      ? ''
      : `, ${terminal}`
  return `${partName(design, id)}${where}${part && part.location !== '' ? ` · ${part.location}` : ''}`
}

/** "W12 (4 mm², red)"; several are taken together. */
function roundWords({ conductors }: Reading, design: Design): string {
  const names = conductors.map((id) => {
    const c = conductorById(design, id)
    if (!c) return id
    const size = c.size === null ? '' : `${sizeName(design, c.size)}, `
    return conductors.length > 2 ? c.number : `${c.number} (${size}${colourName(c.colour)})`
  })
  if (names.length === 0) return 'its conductor'
  return names.length === 1 ? names[0]! : `${listed(names, 8)} together`
}

/** What is to be seen, where it hangs on figures: "3: 15 A"; nothing where the step says it all. */
export function seenWords({ expected }: Reading, { tells }: TestStep): string {
  return expected.is === 'seen' && tells === 'fuses-fitted' ? expected.what : ''
}
