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
  'revisions',
  'handover',
  'bench',
  'making',
  'articles',
  'commissioning',
]
const SETTINGS = [
  'name',
  'customer',
  'vehicle',
  'designer',
  'installer',
  'contact',
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
  'at',
  'turn',
  'mirrored',
  'values',
  'notes',
]
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
  'pathIn',
]

const TEST_RECORD = [
  'is',
  'id',
  'step',
  'reading',
  'of',
  'found',
  'unit',
  'expected',
  'judged',
  'name',
  'remark',
  'by',
  'at',
  'covers',
  'passed',
  'failed',
  'outOfDate',
  'notDone',
]

/** Lists of records that a design need not have. */
const LISTS = {
  ownConductors: ['key', 'name', 'sectionMm2', 'ohmsPerKm', 'amps', 'insulationC', 'offered'],
  accepted: ['key', 'level', 'actual', 'reason', 'by', 'date'],
  zones: ['id', 'name', 'parts', 'x', 'y', 'w', 'h'],
  texts: ['id', 'text', 'view', 'x', 'y'],
  articles: ['key', 'number', 'price', 'weightKg'],
  commissioning: TEST_RECORD,
  revisions: ['number', 'date', 'by', 'reason', 'digest', 'frozen'],
} as const satisfies { readonly [K in keyof Design]?: readonly string[] }

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
    parts: design.parts.map((part) => ordered({ ...part }, PART)),
    conductors: design.conductors.map((conductor) => ordered({ ...conductor }, CONDUCTOR)),
    ...orderedLists(design),
    ...(design.bench ? { bench: sorted(design.bench) } : {}),
  }
  return `${JSON.stringify(
    keyed(file, FILE, (value) => value),
    null,
    2,
  )}\n`
}

const orderedLists = (design: Design) =>
  Object.fromEntries(
    Object.entries(LISTS).flatMap(([key, first]) => {
      const list = design[key as keyof typeof LISTS]
      return list ? [[key, list.map((record) => ordered({ ...record }, first))]] : []
    }),
  )

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
