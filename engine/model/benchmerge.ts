import { BENCH_STEPS, type Bench, type BenchRecord, BUILT_WHATS, NO_BENCH } from './bench'

/**
 * Joins what two devices have recorded. Of each step, each device's word about each fact, each photo, torque and name
 * the later record counts; at the same instant the greater id of a device, then the greater text: the same everywhere.
 * Commutative, associative, idempotent; nothing of either side is lost but what a later record stands in for. Gives back
 * `a` itself where `b` brings nothing. O(n log n).
 */
export function mergeBench(a: Bench = NO_BENCH, b: Bench = NO_BENCH): Bench {
  const { conductors: ca, torques: ta, devices: da, ...moreA } = a
  const { conductors: cb, torques: tb, devices: db, ...moreB } = b
  const conductors = mergeRecords(ca, cb)
  const torques = mergeList(ta, tb, (t) => `${t.part}/${t.terminal}`)
  const devices = mergeList(da, db, (d) => d.device)
  const more = mergeMore(moreA, moreB)
  if (conductors === ca && torques === ta && devices === da && more === moreA) return a
  return { ...more, conductors, ...(torques ? { torques } : {}), ...(devices ? { devices } : {}) }
}

function mergeRecords(a: readonly BenchRecord[], b: readonly BenchRecord[]): readonly BenchRecord[] {
  const byId = new Map<string, BenchRecord>()
  for (const record of [...a, ...b]) {
    const known = byId.get(record.conductor)
    byId.set(record.conductor, mergeRecord(known ?? record, known ? record : {}))
  }
  return inOrder(a, [...byId.values()], (r) => r.conductor)
}

function mergeRecord(a: BenchRecord, b: Partial<BenchRecord>): BenchRecord {
  const { conductor, ticks: ta, built: ba, photos: pa, ...moreA } = a
  const { conductor: _same, ticks: tb, built: bb, photos: pb, ...moreB } = b
  const ticks = mergeList(ta, tb, (t) => `${BENCH_STEPS.indexOf(t.step)}`) ?? []
  const built = mergeList(ba, bb, (f) => `${BUILT_WHATS.indexOf(f.what)} ${f.by}`)
  const photos = mergeList(pa, pb, (p) => p.photo)
  const more = mergeMore(moreA, moreB)
  const sameTicks = ticks === ta || (ticks.length === 0 && ta.length === 0)
  if (sameTicks && built === ba && photos === pa && more === moreA) return a
  return { ...more, conductor, ticks, ...(built ? { built } : {}), ...(photos ? { photos } : {}) }
}

/** The latest of each key, in the order of the keys; undefined where both sides have none. */
function mergeList<T extends { readonly at: string; readonly by?: string }>(
  a: readonly T[] = [],
  b: readonly T[] = [],
  keyOf: (entry: T) => string,
): readonly T[] | undefined {
  const latest = new Map<string, T>()
  for (const entry of [...a, ...b]) {
    const known = latest.get(keyOf(entry))
    if (!known || isLater(entry, known)) latest.set(keyOf(entry), entry)
  }
  return latest.size === 0 ? undefined : inOrder(a, [...latest.values()], keyOf)
}

/** A total order of records: time, then device, then everything that they say. */
export function isLater<T extends { readonly at: string; readonly by?: string }>(a: T, b: T): boolean {
  if (a.at !== b.at) return a.at > b.at
  if (a.by !== b.by) return (a.by ?? '') > (b.by ?? '')
  return canonical(a) > canonical(b)
}

/** Sorted by key; the list of before where it is the same. */
function inOrder<T>(before: readonly T[], list: readonly T[], keyOf: (item: T) => string): readonly T[] {
  const sorted = [...list].sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1))
  return sorted.length === before.length && sorted.every((item, i) => item === before[i]) ? before : sorted
}

type More = Readonly<Record<string, unknown>>

/** Keys that this version does not know, of both sides; where both have one, the greater text. */
function mergeMore(a: More, b: More): More {
  const brought = Object.keys(b).filter((k) => !Object.hasOwn(a, k) || canonical(b[k]) > canonical(a[k]))
  return brought.length === 0 ? a : { ...a, ...Object.fromEntries(brought.map((k) => [k, b[k]])) }
}

/** JSON text with the keys of every record in order: the same data, the same text. */
function canonical(value: unknown): string {
  return (
    JSON.stringify(value, (_key, inner: unknown) =>
      typeof inner === 'object' && inner !== null && !Array.isArray(inner)
        ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
        : inner,
    ) ?? ''
  )
}
