import type { z } from 'zod'
import type { Part, SheetText, Zone } from './design'
import { foundWords, type ProblemList } from './problems'
import { readRecord } from './record'
import { sheetTextSchema, zoneSchema } from './schema'

/** Outlines round places; undefined: the file has none. Parts that are not in the design are left out of them, and told. */
export function readZones(
  data: unknown,
  parts: readonly Part[],
  problems: ProblemList,
): readonly Zone[] | undefined {
  const known = new Set(parts.map((p) => p.id))
  return readList('zones', zoneSchema, ['parts'], data, problems)?.map((zone, i) => {
    const stray = zone.parts.filter((id) => !known.has(id))
    for (const id of stray) problems.add(['zones', i, 'parts'], 'parts of this design', foundWords(id))
    return (stray.length === 0 ? zone : { ...zone, parts: zone.parts.filter((id) => known.has(id)) }) as Zone
  })
}

/** Texts on the sheet; undefined: the file has none. */
export const readTexts = (data: unknown, problems: ProblemList): readonly SheetText[] | undefined =>
  readList('texts', sheetTextSchema, ['view'], data, problems) as readonly SheetText[] | undefined

/** Records one by one; a faulty one is left out and told, and so is a second one with the same id. */
function readList<S extends z.ZodType<{ readonly id: string }>>(
  key: string,
  schema: S,
  repairable: readonly string[],
  data: unknown,
  problems: ProblemList,
): z.output<S>[] | undefined {
  if (data === undefined) return undefined
  if (!Array.isArray(data)) {
    problems.add([key], 'a list', foundWords(data))
    return undefined
  }
  const byId = new Map<string, z.output<S>>()
  data.forEach((raw: unknown, i) => {
    const record = readRecord(schema, raw, [key, i], problems, (field) => repairable.includes(field))
    if (!record) return
    if (byId.has(record.id)) problems.add([key, i, 'id'], 'an id of its own', foundWords(record.id))
    else byId.set(record.id, record)
  })
  return [...byId.values()]
}
