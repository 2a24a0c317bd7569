import { type Design, FORMAT } from './design'

/** Keys of each record in the order in which people read them; further keys follow, sorted. */
const FILE = [
  'loomwright',
  'id',
  'settings',
  'ownRules',
  'ownConductors',
  'parts',
  'conductors',
  'accepted',
  'zones',
  'texts',
]
const SETTINGS = [
  'name',
  'customer',
  'vehicle',
  'designer',
  'revision',
  'date',
  'systemV',
  'ruleSet',
  'ambientC',
  'coldestC',
  'notes',
]
const PART = [
  'id',
  'kind',
  'designation',
  'name',
  'location',
  'x',
  'y',
  'turn',
  'mirrored',
  'values',
  'notes',
]
const ACCEPTED = ['key', 'level', 'actual', 'reason', 'by', 'date']
const ZONE = ['id', 'name', 'parts', 'x', 'y', 'w', 'h']
const TEXT = ['id', 'text', 'view', 'x', 'y']
const OWN_CONDUCTOR = ['key', 'name', 'sectionMm2', 'ohmsPerKm', 'amps', 'insulationC', 'offered']
const CONDUCTOR = [
  'id',
  'number',
  'from',
  'to',
  'returnOf',
  'size',
  'locked',
  'lengthM',
  'colour',
  'insulationC',
  'sheathed',
  'surround',
  'engineSpace',
  'bunched',
  'designCurrent',
  'remark',
  'path',
]

/**
 * Text of a design file: JSON, two spaces, keys in a fixed order, so that the same design gives the same bytes and
 * versions of a file compare line by line. A number that is not finite is written as null, "not known". O(design).
 */
export function writeDesign(design: Design): string {
  const file = {
    ...design,
    loomwright: FORMAT,
    settings: ordered({ ...design.settings }, SETTINGS),
    ...(design.ownRules ? { ownRules: sorted(design.ownRules) } : {}),
    ...(design.ownConductors
      ? { ownConductors: design.ownConductors.map((o) => ordered({ ...o }, OWN_CONDUCTOR)) }
      : {}),
    parts: design.parts.map((part) => ordered({ ...part }, PART)),
    conductors: design.conductors.map((conductor) => ordered({ ...conductor }, CONDUCTOR)),
    ...(design.accepted ? { accepted: design.accepted.map((a) => ordered({ ...a }, ACCEPTED)) } : {}),
    ...(design.zones ? { zones: design.zones.map((z) => ordered({ ...z }, ZONE)) } : {}),
    ...(design.texts ? { texts: design.texts.map((t) => ordered({ ...t }, TEXT)) } : {}),
  }
  return `${JSON.stringify(
    keyed(file, FILE, (value) => value),
    null,
    2,
  )}\n`
}

const ordered = (record: Readonly<Record<string, unknown>>, first: readonly string[]) =>
  keyed(record, first, sorted)

function keyed(
  record: Readonly<Record<string, unknown>>,
  first: readonly string[],
  inner: (value: unknown) => unknown,
): Record<string, unknown> {
  const rest = Object.keys(record)
    .filter((key) => !first.includes(key))
    .sort()
  return Object.fromEntries(
    [...first, ...rest].filter((key) => Object.hasOwn(record, key)).map((key) => [key, inner(record[key])]),
  )
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted)
  return typeof value === 'object' && value !== null
    ? keyed(value as Record<string, unknown>, [], sorted)
    : value
}
