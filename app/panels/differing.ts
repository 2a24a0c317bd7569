import { type Conductor, type Field, figure, type RUN_FIELDS, surroundOf, type Value } from '../../engine'

export type RunKey = keyof typeof RUN_FIELDS

/** What a conductor has in a field of its card. */
export const runValue = (c: Conductor, key: RunKey): Value =>
  key === 'surround' ? surroundOf(c) : (c[key] ?? (key === 'size' ? '' : null))

/** What several conductors have in a field, in a few words: "RD red / BK black", "4 differ"; undefined: all the same. */
export function differing(of: readonly Conductor[], key: RunKey, field: Field): string | undefined {
  const values = [...new Set(of.map((c) => runValue(c, key)))]
  if (values.length < 2) return undefined
  return values.length === 2 ? values.map((v) => words(v, field)).join(' / ') : `${values.length} differ`
}

function words(value: Value, field: Field): string {
  if (value === null || value === '') return field.type === 'choice' ? (field.options[''] ?? 'none') : 'none'
  if (field.type === 'choice') return field.options[String(value)] ?? String(value)
  return field.type === 'number' && typeof value === 'number' ? figure(value, field.unit) : String(value)
}
