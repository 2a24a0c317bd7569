import type { Design } from '../model/design'
import { differencesOf, sameValue } from './benchfacts'
import { keptAside } from './benchrecord'

/** What is recorded about a design while it is built, proved, bought and handed over: no figure and no line hangs on it. */
const RECORDS: ReadonlySet<string> = new Set<keyof Design>([
  'bench',
  'commissioning',
  'handover',
  'revisions',
  'articles',
  'making',
])

/**
 * True where two versions of a design give the same answers, findings and drawing: nothing but records changed, and
 * the same is built otherwise, and left behind. False may also be said of equal designs. O(keys + records of the bench).
 */
export function sameForChecks(a: Design, b: Design): boolean {
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]) as Set<keyof Design>
  for (const key of keys) if (!RECORDS.has(key) && a[key] !== b[key]) return false
  if (a.bench === b.bench) return true
  const [aside, asideThen] = [keptAside(b), keptAside(a)]
  if (aside.length !== asideThen.length || aside.some((k, i) => k.record !== asideThen[i]!.record))
    return false
  const [p, q] = [differencesOf(a), differencesOf(b)]
  return (
    p.length === q.length &&
    p.every((d, i) => {
      const e = q[i]!
      return d.conductor === e.conductor && d.what === e.what && sameValue(d.built, e.built)
    })
  )
}
