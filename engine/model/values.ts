import type { Cell, CellField, Field, Fields, Row, RowsField, Value, Values, ValuesOf } from './fields'

/** The values of a new part: every field at its initial value, rows at their initial count. */
export function initialValues<F extends Fields>(fields: F): ValuesOf<F> {
  const values: Record<string, Value> = {}
  for (const [key, field] of Object.entries(fields)) values[key] = initialValue(field)
  return values as ValuesOf<F>
}

/** One row at its initial values. */
export function initialRow(field: RowsField): Row {
  const row: Record<string, Cell> = {}
  for (const [key, column] of Object.entries(field.columns)) row[key] = column.initial
  return row
}

/** Values are never changed in place, so what completes them is remembered weakly. */
const completed = new WeakMap<Values, { readonly fields: Fields; readonly full: Values }>()

/**
 * Values with everything that is missing at its initial value; keys that the fields do not know are kept.
 * Gives back the same object when nothing was missing, and the same for the same values. O(fields + rows) at first.
 */
export function complete<F extends Fields>(fields: F, values: Values): ValuesOf<F> {
  const known = completed.get(values)
  if (known?.fields === fields) return known.full as ValuesOf<F>
  const full = withInitial(fields, values)
  completed.set(values, { fields, full })
  return full as ValuesOf<F>
}

function withInitial(fields: Fields, values: Values): Values {
  let full: Record<string, Value> | null = null
  for (const [key, field] of Object.entries(fields)) {
    const before = values[key]
    const after = before === undefined ? initialValue(field) : completeRows(field, before)
    if (after === before) continue
    full ??= { ...values }
    full[key] = after
  }
  return full ?? values
}

function initialValue(field: Field): Value {
  if (field.type !== 'rows') return field.initial
  return Array.from({ length: field.initial }, () => initialRow(field))
}

function completeRows(field: Field, value: Value): Value {
  if (field.type !== 'rows' || !isRows(value)) return value
  const columns = Object.entries(field.columns)
  const rows = value.map((row) => completeRow(columns, row))
  return rows.every((row, i) => row === value[i]) ? value : rows
}

function completeRow(columns: readonly (readonly [string, CellField])[], row: Row): Row {
  let full: Record<string, Cell> | null = null
  for (const [key, column] of columns) {
    if (row[key] !== undefined) continue
    full ??= { ...row }
    full[key] = column.initial
  }
  return full ?? row
}

/** Narrows a value to rows; `Array.isArray` alone does not narrow a read-only array. */
export const isRows = (value: Value): value is readonly Row[] => Array.isArray(value)
