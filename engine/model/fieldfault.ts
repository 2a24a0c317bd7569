import type { CellField, Field, NumberField, RowsField, Value } from './fields'
import { isRows } from './values'

/** Why a value does not fit its field, in words that follow "takes" or "expected": where, what fits, what it is. */
export interface FieldFault {
  /** Inside the value: `[2, "amps"]` for a cell of a row, empty for the value itself. */
  readonly at: readonly (string | number)[]
  readonly expected: string
}

/** Checks a value against its field. Unknown columns of a row are let be. O(rows × columns). */
export function valueFault(field: Field, value: Value): FieldFault | null {
  return field.type === 'rows' ? rowsFault(field, value) : cellFault(field, value)
}

function rowsFault(field: RowsField, value: Value): FieldFault | null {
  const expected = `${field.min} to ${field.max} rows`
  if (!isRows(value) || value.length < field.min || value.length > field.max) return { at: [], expected }
  for (const [i, row] of value.entries())
    for (const [key, column] of Object.entries(field.columns)) {
      const cell = row[key]
      const fault = cell === undefined ? null : cellFault(column, cell)
      if (fault) return { at: [i, key], expected: fault.expected }
    }
  return null
}

function cellFault(field: CellField, value: Value): FieldFault | null {
  switch (field.type) {
    case 'number':
      return numberFits(field, value) ? null : { at: [], expected: numberWanted(field) }
    case 'text':
      return typeof value === 'string' ? null : { at: [], expected: 'text' }
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(field.options, value)
        ? null
        : { at: [], expected: `one of ${Object.keys(field.options).join(', ')}` }
    case 'flag':
      return typeof value === 'boolean' ? null : { at: [], expected: 'yes or no' }
  }
}

function numberFits(field: NumberField, value: Value): boolean {
  if (value === null) return true
  if (typeof value !== 'number' || !Number.isFinite(value)) return false
  if (field.whole && !Number.isInteger(value)) return false
  return value >= (field.min ?? -BOUND) && value <= (field.max ?? BOUND)
}

/** No quantity of this trade is larger in the units of `Unit`; keeps sums and products finite. */
const BOUND = 1e9

function numberWanted({ whole, min, max, unit }: NumberField): string {
  const what = whole ? 'a whole number' : 'a number'
  const in_ = unit === '' ? '' : ` of ${unit}`
  if (min !== undefined && max !== undefined) return `${what}${in_} from ${min} to ${max}`
  if (min !== undefined) return `${what}${in_} of at least ${min}`
  return max !== undefined ? `${what}${in_} of at most ${max}` : `${what}${in_}`
}
