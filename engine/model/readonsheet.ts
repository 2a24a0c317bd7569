import type { Part, SheetText, Zone } from './design'
import { foundWords, type ProblemList } from './problems'
import { readKeyed } from './readkeyed'
import { sheetTextSchema, zoneSchema } from './schema'

/** Outlines round places; undefined: the file has none. Parts that are not in the design are left out of them, and told. */
export function readZones(
  data: unknown,
  parts: readonly Part[],
  problems: ProblemList,
): readonly Zone[] | undefined {
  const known = new Set(parts.map((p) => p.id))
  return readKeyed('zones', 'id', zoneSchema, ['parts'], data, problems)?.map((zone, i) => {
    const stray = zone.parts.filter((id) => !known.has(id))
    for (const id of stray) problems.add(['zones', i, 'parts'], 'parts of this design', foundWords(id))
    return (stray.length === 0 ? zone : { ...zone, parts: zone.parts.filter((id) => known.has(id)) }) as Zone
  })
}

/** Texts on the sheet; undefined: the file has none. */
export const readTexts = (data: unknown, problems: ProblemList): readonly SheetText[] | undefined =>
  readKeyed('texts', 'id', sheetTextSchema, ['view'], data, problems) as readonly SheetText[] | undefined
