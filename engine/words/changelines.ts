import type { FieldChange } from '../calc/compare/changes'
import { kindOf } from '../kinds/all'
import type { Conductor, Design, Part, Settings } from '../model/design'
import type { Row } from '../model/fields'
import { sizeIn } from '../model/sizes'
import { type FactWords, partFact, settingFact, valueWords } from './changefields'
import { endName } from './names'

/** The two states that are compared. */
export interface Pair {
  readonly before: Design
  readonly after: Design
}

export const factLine = ({ label, say }: FactWords, change: FieldChange, { before, after }: Pair): string =>
  `${label}: ${say(change.before, before)} → ${say(change.after, after)}`

export const factLines = (
  fields: readonly FieldChange[],
  factOf: (key: string) => FactWords,
  pair: Pair,
): string[] => fields.map((f) => factLine(factOf(String(f.path[0])), f, pair))

/** Facts of a part; what changed in one row of a table stands on one line: "Way 3: Rating: 10 A → 15 A". */
export function partLines({ kind }: Part, fields: readonly FieldChange[], pair: Pair): string[] {
  const lines = new Map<string, string[]>()
  for (const field of fields) {
    const [, key, row, column] = field.path
    const table = kindOf(kind)?.fields[String(key)]
    const each = table?.type === 'rows' && typeof row === 'number' ? `${capital(table.each)} ${row + 1}` : ''
    const words =
      each !== '' && column === undefined
        ? rowWords(kind, field)
        : factLine(partFact(kind, field.path), field, pair)
    const of = each === '' ? field.path.join('.') : each
    lines.set(of, [...(lines.get(of) ?? (each === '' ? [] : [`${each}:`])), words])
  }
  return [...lines.values()].map(([first = '', ...rest]) =>
    first.endsWith(':') && rest.length > 0 ? `${first} ${rest.join('; ')}` : [first, ...rest].join('; '),
  )
}

/** "added, Rating 10 A, Label “Heater”" */
function rowWords(kind: string, { path, before, after }: FieldChange): string {
  const row = (after ?? before) as Row
  const cells = Object.entries(row).flatMap(([key, value]) => {
    if (value === null || value === '' || value === false) return []
    const { label } = partFact(kind, [...path, key])
    const table = kindOf(kind)?.fields[String(path[1])]
    return [`${label} ${valueWords(table?.type === 'rows' ? table.columns[key] : undefined, value)}`]
  })
  return [after === undefined ? 'removed' : 'added', ...cells].join(', ')
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1)

/** What a part is: its kind, what must be known of it, where it sits. */
export function partIs({ kind, values, location }: Part): string[] {
  const known = kindOf(kind)
  const needed = Object.entries(known?.fields ?? {}).flatMap(([key, field]) =>
    field.type !== 'rows' && field.required && field.role !== 'result' && values[key] != null
      ? [`${field.label} ${valueWords(field, values[key])}`]
      : [],
  )
  const where = location === '' ? [] : [`Location “${location}”`]
  return [[known?.title ?? `Unknown kind “${kind}”`, ...needed, ...where].join(', ')]
}

/** What a conductor is: its ends, size, length and colour. */
export function conductorIs(c: Conductor, design: Design): string[] {
  const size = c.size === null ? 'size not chosen' : (sizeIn(design, c.size)?.name ?? c.size)
  const length = c.lengthM === null ? 'length not measured' : `${c.lengthM} m`
  return [`${endName(design, c.from)} → ${endName(design, c.to)}`, [size, length, c.colour].join(', ')]
}

/** Settings; of the drawing notes, the lines that came and went. */
export function settingLines(fields: readonly FieldChange[], pair: Pair): string[] {
  return fields.flatMap((field) => {
    const key = String(field.path[0]) as keyof Settings
    if (key !== 'notes') return [factLine(settingFact(key), field, pair)]
    const [was, is] = [noteLines(field.before), noteLines(field.after)]
    const gone = was.filter((line) => !is.includes(line)).map((line) => `Drawing note removed: “${line}”`)
    const come = is.filter((line) => !was.includes(line)).map((line) => `Drawing note added: “${line}”`)
    return gone.length + come.length > 0 ? [...gone, ...come] : ['Drawing notes: in another order']
  })
}

const noteLines = (text: unknown): string[] =>
  String(text ?? '')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
