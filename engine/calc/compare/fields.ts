import { kindOf } from '../../kinds/all'
import type { Part } from '../../model/design'
import type { Row, Value, Values } from '../../model/fields'
import { complete, isRows } from '../../model/values'
import type { FieldChange } from './changes'

type Facts = Readonly<Record<string, unknown>>
type Path = FieldChange['path']

/** The same data, whatever the order of its keys; a key that is undefined is not there. Linear. */
export function same(a: unknown, b: unknown): boolean {
  if (Object.is(a, b) || (a === 0 && b === 0)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const keys = new Set([...Object.keys(a), ...Object.keys(b)])
  return [...keys].every((key) => same((a as Facts)[key], (b as Facts)[key]))
}

/** Keys that differ, in the order in which they stand. Absent on one side counts as its default, where it has one. */
export function fieldChanges(
  before: object,
  after: object,
  { skip = [], defaults = {}, at = [] }: { skip?: readonly string[]; defaults?: Facts; at?: Path } = {},
): FieldChange[] {
  const [a, b] = [before as Facts, after as Facts]
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].flatMap((key) => {
    const [was, is] = [a[key] ?? defaults[key], b[key] ?? defaults[key]]
    return skip.includes(key) || same(was, is) ? [] : [{ path: [...at, key], before: was, after: is }]
  })
}

/** Values of a part, field by field; tables row by row. A value that is not there counts as the initial one of its kind. */
export function valueChanges(before: Part, after: Part): FieldChange[] {
  const [a, b] = [full(before), full(after)]
  return fieldChanges(a, b, { at: ['values'] }).flatMap((change) => {
    const [was, is] = [change.before, change.after] as [Value | undefined, Value | undefined]
    return was !== undefined && is !== undefined && isRows(was) && isRows(is)
      ? rowChanges(was, is, change.path)
      : [change]
  })
}

const full = ({ kind, values }: Part): Values => {
  const known = kindOf(kind)
  return known ? complete(known.fields, values) : values
}

/** Rows are known by their place: way 3 stays way 3. */
function rowChanges(before: readonly Row[], after: readonly Row[], at: Path): FieldChange[] {
  return Array.from({ length: Math.max(before.length, after.length) }, (_, i) => i).flatMap((i) => {
    const [was, is] = [before[i], after[i]]
    const path = [...at, i]
    return was && is ? fieldChanges(was, is, { at: path }) : [{ path, before: was, after: is }]
  })
}
