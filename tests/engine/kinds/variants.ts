import type { Cell, Field, Row, Value, Values } from '../../../engine/model/fields'
import type { Kind } from '../../../engine/model/kind'
import { initialValues } from '../../../engine/model/values'

/** Values of a kind that reach every shape it can take: one field at a time away from its initial value, then all. */
export function variantsOf(kind: Kind): readonly Values[] {
  const initial: Values = initialValues(kind.fields)
  const all = [initial]
  for (const [key, field] of Object.entries(kind.fields))
    if (field.role !== 'result') for (const value of extremes(field)) all.push({ ...initial, [key]: value })
  for (const end of [0, -1]) all.push({ ...initial, ...atEnds(kind, end) })
  return all
}

/** Every field at its first or at its last extreme, all together. */
function atEnds(kind: Kind, end: number): Values {
  const inputs = Object.entries(kind.fields).filter(([, field]) => field.role !== 'result')
  return Object.fromEntries(inputs.map(([key, field]) => [key, extremes(field).at(end)!]))
}

function extremes(field: Field): readonly Value[] {
  switch (field.type) {
    case 'choice':
      return Object.keys(field.options)
    case 'flag':
      return [true, false]
    case 'text':
      return ['', 'A name that is much too long for the place where it is to stand']
    case 'number':
      return [
        null,
        ...(field.min === undefined ? [] : [field.min]),
        ...(field.max === undefined ? [] : [field.max]),
        7.5,
      ].filter((n) => n === null || !field.whole || Number.isInteger(n))
    case 'rows':
      return [field.min, field.initial, field.max].map((n) =>
        Array.from({ length: n }, (_, i) => row(field.columns, i)),
      )
  }
}

function row(columns: Readonly<Record<string, Field>>, i: number): Row {
  const cells: Record<string, Cell> = {}
  for (const [key, column] of Object.entries(columns))
    cells[key] =
      column.type === 'number'
        ? (column.standard?.[i % column.standard.length] ?? 10)
        : `WWWW name of row ${i}`
  return cells
}
