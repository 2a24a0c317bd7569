import { kindOf } from '../kinds/all'
import type { Design, TerminalRef } from '../model/design'
import { DESIGN_FIELDS } from '../model/designfields'
import type { Field } from '../model/fields'
import { OWN_CONDUCTOR_TABLE, OWN_RULE_FIELDS } from '../model/ownfields'
import { RUN_FIELDS } from '../model/runfields'
import { sizeIn } from '../model/sizes'
import { conductorName, endName, partName } from './names'

/** What a fact is called, and how its value is said; `design` is the state that the value is of. */
export interface FactWords {
  readonly label: string
  readonly say: (value: unknown, design: Design) => string
}

export const NOT_SET = 'not set'

/** A value as its field shows it: with its unit, or the words of the choice. */
export function valueWords(field: Field | undefined, value: unknown): string {
  if (value === null || value === undefined || value === '') return NOT_SET
  if (field?.type === 'choice') return field.options[String(value)] ?? String(value)
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  if (typeof value === 'number') return withUnit(value, field?.type === 'number' ? field.unit : '')
  return typeof value === 'string' ? `“${value.trim()}”` : 'something else'
}

/** In full: a comparison that rounds would show two equal figures. */
const withUnit = (value: number, unit: string): string => (unit === '' ? `${value}` : `${value} ${unit}`)

const plain = (label: string, field?: Field): FactWords => ({
  label,
  say: (value) => valueWords(field, value),
})

const ofField = (field: Field | undefined, key: string): FactWords => plain(field?.label ?? key, field)

const listed = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : [])

const PART: Readonly<Record<string, FactWords>> = {
  designation: plain('Designation'),
  name: plain('Name'),
  location: plain('Location'),
  notes: { label: 'Drawing notes', say: (value) => listed(value).join(', ') || 'none' },
}

/** The field of a part behind a path; of a table, of its column. */
export function partFact(kind: string, [first, key, , column]: readonly (string | number)[]): FactWords {
  if (first !== 'values') return PART[String(first)] ?? plain(String(first))
  const field = kindOf(kind)?.fields[String(key)]
  if (field?.type === 'rows' && column !== undefined) return ofField(field.columns[column], String(column))
  return ofField(field, String(key))
}

const CONDUCTOR: Readonly<Record<string, FactWords>> = {
  size: {
    label: RUN_FIELDS.size.label,
    say: (value, design) =>
      typeof value === 'string' ? (sizeIn(design, value)?.name ?? value) : 'not chosen',
  },
  from: { label: 'From', say: (value, design) => endName(design, value as TerminalRef) },
  to: { label: 'To', say: (value, design) => endName(design, value as TerminalRef) },
  returnOf: {
    label: 'Return of',
    say: (value, design) => (typeof value === 'string' ? conductorName(design, value) : 'none'),
  },
  locked: plain('Size locked'),
  designCurrent: {
    label: 'Own design current',
    say: (value) => {
      const own = value as { readonly amps: number; readonly reason: string } | null | undefined
      return own ? `${own.amps} A, “${own.reason}”` : 'none'
    },
  },
}

export const conductorFact = (key: string): FactWords =>
  CONDUCTOR[key] ?? ofField(RUN_FIELDS[key as keyof typeof RUN_FIELDS], key)

export const settingFact = (key: string): FactWords => {
  const field = DESIGN_FIELDS[key as keyof typeof DESIGN_FIELDS]
  return key === 'systemV'
    ? { label: field?.label ?? key, say: (value) => withUnit(Number(value), 'V') }
    : ofField(field, key)
}

export const ownRuleFact = (key: string): FactWords =>
  ofField(OWN_RULE_FIELDS[key as keyof typeof OWN_RULE_FIELDS], key)

export const ownConductorFact = (key: string): FactWords => ofField(OWN_CONDUCTOR_TABLE.columns[key], key)

const VIEWS: Readonly<Record<string, string>> = {
  all: 'all views',
  'single-line': 'single-line',
  'both-poles': 'both poles',
  data: 'data links',
}

const ON_SHEET: Readonly<Record<string, FactWords>> = {
  name: plain('Name'),
  text: plain('Words'),
  view: { label: 'Stands in', say: (value) => VIEWS[String(value)] ?? String(value) },
  parts: {
    label: 'Round',
    say: (value, design) =>
      listed(value)
        .map((id) => partName(design, id))
        .join(', ') || 'no parts',
  },
}

export const sheetFact = (key: string): FactWords => ON_SHEET[key] ?? plain(key)

const ACCEPTED: Readonly<Record<string, FactWords>> = {
  reason: plain('Reason'),
  by: plain('By'),
  date: plain('Date'),
  level: plain('Level then'),
  actual: plain('Figure then'),
}

export const acceptedFact = (key: string): FactWords => ACCEPTED[key] ?? plain(key)

/** Parts of a design without words of their own. */
export const OTHER: Readonly<Record<string, string>> = {
  making: 'How conductors are made up',
  articles: 'Own articles',
}
