import type { PackReader, PackSection } from './section'
import { PACK_SECTIONS } from './sections'

/** Keys of what a pack holds for a reader, unless somebody chooses otherwise; in the order of the pack. */
export const usualContents = (reader: PackReader): readonly string[] =>
  PACK_SECTIONS.filter((s) => s.readers.includes(reader)).map((s) => s.key)

/** Sections by their keys, in that order, each once. Throws a RangeError for a key that no section has. */
export function sectionsNamed(keys: readonly string[]): readonly PackSection[] {
  return [...new Set(keys)].map((key) => {
    const section = PACK_SECTIONS.find((s) => s.key === key)
    if (!section) throw new RangeError(`no section of a pack is called ${key}`)
    return section
  })
}
