import type {
  CellField,
  ChoiceField,
  FlagField,
  NumberField,
  RowsField,
  TextField,
  Unit,
} from '../model/fields'

/** Makers of fields, so that a kind's fields read as a table: label, unit, help, and what differs from the usual. */

type Shared = 'role' | 'required' | 'group'

/** A number; empty until typed unless `initial` is given; never negative unless `min` is given. */
export const number = (
  label: string,
  unit: Unit,
  about: string,
  more: Partial<Pick<NumberField, Shared | 'initial' | 'min' | 'max' | 'whole' | 'standard'>> = {},
): NumberField => ({ type: 'number', label, unit, about, initial: null, min: 0, ...more })

/** A figure that is computed from the others and only shown. */
export const result = (label: string, unit: Unit, about: string): NumberField => ({
  type: 'number',
  label,
  unit,
  about,
  initial: null,
  role: 'result',
})

export const words = (
  label: string,
  about: string,
  more: Partial<Pick<TextField, Shared | 'initial'>> = {},
): TextField => ({ type: 'text', label, about, initial: '', ...more })

export const choice = <const K extends string>(
  label: string,
  about: string,
  options: Readonly<Record<K, string>>,
  initial: NoInfer<K>,
  more: Partial<Pick<ChoiceField, Shared>> = {},
): ChoiceField<K> => ({ type: 'choice', label, about, options, initial, ...more })

export const flag = (
  label: string,
  about: string,
  more: Partial<Pick<FlagField, Shared | 'initial'>> = {},
): FlagField => ({ type: 'flag', label, about, initial: false, ...more })

/** How many of something: a whole number that is never empty. */
export const count = (
  label: string,
  about: string,
  initial: number,
  min: number,
  max: number,
): NumberField => ({ type: 'number', unit: '', label, about, initial, min, max, whole: true })

export const rows = <C extends Readonly<Record<string, CellField>>>(
  label: string,
  each: string,
  about: string,
  columns: C,
  initial: number,
  max: number,
): RowsField<C> => ({ type: 'rows', label, each, about, columns, initial, min: 1, max })

/** A count as the drawing uses it: an emptied field falls back, a damaged one stays within its limits. */
export const counted = (value: number | null, field: NumberField): number =>
  Math.min(field.max ?? 99, Math.max(field.min ?? 1, Math.round(value ?? field.initial ?? 1)))
