/**
 * A small check of data against JSON Schema 2020-12, written for these tests: the keywords below and no others,
 * so that a keyword it does not know is a fault and not a pass.
 */
type Schema = Record<string, unknown>

const SILENT = ['$schema', '$defs', 'title', 'description']

/** Places that do not fit, with the reason; empty where everything does. */
export function misfits(root: Schema, schema: Schema, data: unknown, path = '$'): string[] {
  const wrong: string[] = []
  const say = (good: boolean, why: string): void => {
    if (!good) wrong.push(`${path}: ${why}`)
  }
  const checks: Record<string, (value: never) => void> = {
    $ref: (to: string) => wrong.push(...misfits(root, at(root, to), data, path)),
    type: (type: string) => say(isOf(type, data), `is no ${type}`),
    const: (value: unknown) => say(data === value, `is not ${value}`),
    enum: (values: unknown[]) => say(values.includes(data), `is none of ${values.join(', ')}`),
    anyOf: (options: Schema[]) => {
      const all = options.map((s) => misfits(root, s, data, path))
      if (all.every((faults) => faults.length > 0)) wrong.push(...all.flat())
    },
    minimum: (least: number) => say(typeof data !== 'number' || data >= least, `is below ${least}`),
    maximum: (most: number) => say(typeof data !== 'number' || data <= most, `is above ${most}`),
    exclusiveMinimum: (least: number) =>
      say(typeof data !== 'number' || data > least, `is not above ${least}`),
    minLength: (least: number) => say(typeof data !== 'string' || data.length >= least, 'is too short'),
    maxLength: (most: number) => say(typeof data !== 'string' || data.length <= most, 'is too long'),
    minItems: (least: number) => say(!Array.isArray(data) || data.length >= least, 'has too few entries'),
    maxItems: (most: number) => say(!Array.isArray(data) || data.length <= most, 'has too many entries'),
    items: (s: Schema) => {
      if (!Array.isArray(data)) return
      for (const [i, x] of data.entries()) wrong.push(...misfits(root, s, x, `${path}[${i}]`))
    },
    prefixItems: (list: Schema[]) => {
      if (!Array.isArray(data)) return
      for (const [i, s] of list.entries()) wrong.push(...misfits(root, s, data[i], `${path}[${i}]`))
    },
    required: (keys: string[]) => {
      for (const key of keys) say(!isRecord(data) || Object.hasOwn(data, key), `lacks ${key}`)
    },
    properties: (parts: Record<string, Schema>) => {
      if (!isRecord(data)) return
      for (const [key, s] of Object.entries(parts))
        if (Object.hasOwn(data, key)) wrong.push(...misfits(root, s, data[key], `${path}.${key}`))
    },
    additionalProperties: (allowed: boolean) => {
      if (allowed || !isRecord(data)) return
      const known = Object.keys((schema.properties as Schema | undefined) ?? {})
      for (const key of Object.keys(data)) say(known.includes(key), `has another key, ${key}`)
    },
  }
  for (const [keyword, value] of Object.entries(schema)) {
    if (SILENT.includes(keyword)) continue
    const check = checks[keyword]
    if (!check) throw new Error(`the check does not know the keyword ${keyword}`)
    check(value as never)
  }
  return wrong
}

const isRecord = (data: unknown): data is Record<string, unknown> =>
  typeof data === 'object' && data !== null && !Array.isArray(data)

function isOf(type: string, data: unknown): boolean {
  if (type === 'null') return data === null
  if (type === 'array') return Array.isArray(data)
  if (type === 'object') return isRecord(data)
  if (type === 'integer') return Number.isInteger(data)
  return typeof data === type && !Number.isNaN(data)
}

function at(root: Schema, pointer: string): Schema {
  let here: unknown = root
  for (const step of pointer.split('/').slice(1)) here = (here as Schema)[step]
  if (!isRecord(here)) throw new Error(`the schema has nothing at ${pointer}`)
  return here
}
