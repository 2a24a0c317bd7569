/**
 * The permanent record: keys of kinds, fields, options and terminals that files may hold. Nothing in it is ever
 * renamed or dropped without a file upgrade. `tsx tests/engine/kinds/record.ts` adds what is new.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { KINDS } from '../../../engine/kinds/all'
import type { Field } from '../../../engine/model/fields'
import type { Kind } from '../../../engine/model/kind'
import { variantsOf } from './variants'

export interface KindRecord {
  readonly fields: Readonly<Record<string, string>>
  /** Keys of terminals in any variant. */
  readonly terminals: readonly string[]
}
export type KindRecords = Readonly<Record<string, KindRecord>>

const path = fileURLToPath(new URL('./record.json', import.meta.url))

export const writtenRecords = (): KindRecords => JSON.parse(readFileSync(path, 'utf8')) as KindRecords

export const currentRecords = (): KindRecords =>
  Object.fromEntries(KINDS.map((kind) => [kind.key, recordOf(kind)]))

function recordOf(kind: Kind): KindRecord {
  const keys = variantsOf(kind).flatMap((v) => kind.terminals(v).map((t) => t.key))
  return {
    fields: Object.fromEntries(Object.entries(kind.fields).map(([key, field]) => [key, shapeOf(field)])),
    terminals: [...new Set(keys)].sort(),
  }
}

function shapeOf(field: Field): string {
  switch (field.type) {
    case 'number':
      return `number ${field.unit}`.trim()
    case 'choice':
      return `choice ${Object.keys(field.options).sort().join(' ')}`
    case 'rows':
      return `rows ${Object.entries(field.columns)
        .map(([key, column]) => `${key}: ${shapeOf(column)}`)
        .join(', ')}`
    default:
      return field.type
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(path, `${JSON.stringify(currentRecords(), null, 1)}\n`)
