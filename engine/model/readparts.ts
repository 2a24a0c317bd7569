import type { Part } from './design'
import { valueFault } from './fieldfault'
import type { Field, Value, Values } from './fields'
import type { KindLookup } from './kind'
import { foundWords, type Path, type ProblemList } from './problems'
import { isRecord, readRecord } from './record'
import { partSchema } from './schema'
import { TakenNames } from './takennames'

/** Without these a part is not a part. */
const ESSENTIAL = ['id', 'kind', 'designation']

/**
 * Reads parts one by one. A part of unknown kind is kept as it is. A value that does not fit its field is left out,
 * and so stands at its initial value. Of two parts with one id the first stays; a designation given twice is renewed.
 */
export function readParts(list: readonly unknown[], kindOf: KindLookup, problems: ProblemList): Part[] {
  const parts: Part[] = []
  const ids = new Set<string>()
  const designations = new TakenNames()
  for (const [i, data] of list.entries()) {
    const path: Path = ['parts', i]
    const read = readRecord(partSchema, data, path, problems, (key) => !ESSENTIAL.includes(key))
    if (!read) continue
    if (ids.has(read.id)) {
      problems.add([...path, 'id'], 'an id of its own', `"${read.id}" once more; this part is left out`)
      continue
    }
    ids.add(read.id)
    const designation = designations.take(read.designation)
    if (designation !== read.designation)
      problems.add(
        [...path, 'designation'],
        'a designation of its own',
        `"${read.designation}" once more; now ${designation}`,
      )
    const fields = kindOf(read.kind)?.fields
    const values = fields ? fitting(fields, read.values, [...path, 'values'], problems) : read.values
    parts.push({ ...read, designation, values: values as Values })
  }
  return parts
}

function fitting(
  fields: Readonly<Record<string, Field>>,
  values: Readonly<Record<string, unknown>>,
  path: Path,
  problems: ProblemList,
): Readonly<Record<string, unknown>> {
  const kept: Record<string, unknown> = { ...values }
  for (const [key, field] of Object.entries(fields)) {
    const value = values[key]
    if (value === undefined) continue
    const at = rowAtFault(field, value) ?? valueFault(field, value as Value)
    if (!at) continue
    problems.add([...path, key, ...at.at], at.expected, foundWords(inside(value, at.at)))
    delete kept[key]
  }
  return kept
}

/** A list whose rows are no records cannot be asked for cells. */
function rowAtFault(
  field: Field,
  value: unknown,
): { at: readonly (string | number)[]; expected: string } | null {
  if (field.type !== 'rows' || !Array.isArray(value)) return null
  const i = value.findIndex((row) => !isRecord(row))
  return i < 0 ? null : { at: [i], expected: 'a row: a record' }
}

function inside(value: unknown, steps: readonly (string | number)[]): unknown {
  return steps.reduce<unknown>(
    (now, step) => (now as Record<string | number, unknown> | undefined)?.[step],
    value,
  )
}
