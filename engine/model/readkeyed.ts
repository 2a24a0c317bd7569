import type { z } from 'zod'
import { foundWords, type ProblemList } from './problems'
import { readRecord } from './record'

/** Records one by one; a faulty one is left out and told, and so is a second one with the same key. undefined: the file has none. */
export function readKeyed<K extends string, S extends z.ZodType<{ readonly [key in K]: string }>>(
  list: string,
  key: K,
  schema: S,
  repairable: readonly string[],
  data: unknown,
  problems: ProblemList,
): z.output<S>[] | undefined {
  if (data === undefined) return undefined
  if (!Array.isArray(data)) {
    problems.add([list], 'a list', foundWords(data))
    return undefined
  }
  const byKey = new Map<string, z.output<S>>()
  data.forEach((raw: unknown, i) => {
    const record = readRecord(schema, raw, [list, i], problems, (field) => repairable.includes(field))
    if (!record) return
    const of = record[key]
    if (byKey.has(of))
      problems.add([list, i, key], `${key === 'id' ? 'an id' : 'a key'} of its own`, foundWords(of))
    else byKey.set(of, record)
  })
  return [...byKey.values()]
}
