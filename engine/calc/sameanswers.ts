import type { Conductor, Design, Part, Settings } from '../model/design'

/*
 * What no answer looks at. Everything that is not named here counts, so that a key that comes new to designs is taken
 * to matter until somebody says otherwise. Findings do look at some of it: they are made anew after every edit.
 */
const DESIGN: ReadonlySet<keyof Design> = new Set([
  'id',
  'settings',
  'parts',
  'conductors',
  'accepted',
  'zones',
  'texts',
  'handover',
  'articles',
  'bench',
  'commissioning',
  'making',
  'revisions',
])
const SETTINGS: ReadonlySet<keyof Settings> = new Set([
  'name',
  'customer',
  'vehicle',
  'designer',
  'installer',
  'contact',
  'revision',
  'date',
  'notes',
])
const PART: ReadonlySet<keyof Part> = new Set([
  'designation',
  'name',
  'location',
  'x',
  'y',
  'at',
  'turn',
  'mirrored',
  'notes',
])
const CONDUCTOR: ReadonlySet<keyof Conductor> = new Set([
  'number',
  'locked',
  'colour',
  'remark',
  'path',
  'pathIn',
])

/**
 * Have two designs the same answers, because they differ in nothing that an answer looks at: parts moved or renamed,
 * conductors routed otherwise, texts? Never true wrongly; false where it is not plain to see. O(what differs by identity).
 */
export function haveSameAnswers(a: Design, b: Design): boolean {
  return (
    alike(a, b, DESIGN) &&
    alike(a.settings, b.settings, SETTINGS) &&
    allAlike(a.parts, b.parts, PART) &&
    allAlike(a.conductors, b.conductors, CONDUCTOR)
  )
}

/**
 * The design with the part and conductor objects of another one wherever they are equal, and with its values where only
 * those are: what is remembered for an object then need not be worked out again for a copy of it. O(parts + conductors).
 */
export function onKnownObjects(design: Design, known: Design): Design {
  const parts = new Map(known.parts.map((part) => [part.id, part]))
  const conductors = new Map(known.conductors.map((c) => [c.id, c]))
  return {
    ...design,
    parts: design.parts.map((part) => {
      const before = parts.get(part.id)
      if (!before || before.kind !== part.kind || !equal(before.values, part.values)) return part
      return equal(before, part) ? before : { ...part, values: before.values }
    }),
    conductors: design.conductors.map((c) => {
      const before = conductors.get(c.id)
      return before && equal(before, c) ? before : c
    }),
  }
}

const allAlike = <T extends object>(
  a: readonly T[],
  b: readonly T[],
  besides: ReadonlySet<keyof T>,
): boolean => a === b || (a.length === b.length && a.every((x, i) => alike(x, b[i]!, besides)))

/** Same keys with equal values, besides some. */
function alike<T extends object>(a: T, b: T, besides: ReadonlySet<keyof T>): boolean {
  if (a === b) return true
  const counts = (x: T): (keyof T)[] => (Object.keys(x) as (keyof T)[]).filter((key) => !besides.has(key))
  const keys = counts(a)
  return (
    keys.length === counts(b).length && keys.every((key) => Object.hasOwn(b, key) && equal(a[key], b[key]))
  )
}

/** Plain data: equal in value, to the last key. */
function equal(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const keys = Object.keys(a)
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && equal(Reflect.get(a, key), Reflect.get(b, key)))
  )
}
