/** What the measuring of text needs of a TrueType file: advance widths by character, and the height of a capital. */
export interface Typeface {
  readonly unitsPerEm: number
  readonly capHeight: number
  /** Advance width in font units, by code point. */
  readonly advances: ReadonlyMap<number, number>
}

/** Reads head, hhea, hmtx, OS/2 and cmap (format 4). Source: the OpenType specification, ISO/IEC 14496-22. */
export function readTypeface(bytes: Uint8Array): Typeface {
  const at = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = new Map<string, number>()
  for (let i = 0; i < at.getUint16(4); i++) {
    const entry = 12 + 16 * i
    const tag = String.fromCharCode(...bytes.subarray(entry, entry + 4))
    tables.set(tag, at.getUint32(entry + 8))
  }
  const table = (tag: string): number => {
    const offset = tables.get(tag)
    if (offset === undefined) throw new Error(`The typeface has no table ${tag}`)
    return offset
  }
  const metrics = at.getUint16(table('hhea') + 34)
  const advanceOf = (glyph: number) => at.getUint16(table('hmtx') + 4 * Math.min(glyph, metrics - 1))
  const advances = new Map<number, number>()
  for (const [code, glyph] of characters(at, table('cmap'))) advances.set(code, advanceOf(glyph))
  return {
    unitsPerEm: at.getUint16(table('head') + 18),
    capHeight: at.getInt16(table('OS/2') + 88),
    advances,
  }
}

function* characters(at: DataView, cmap: number): Generator<readonly [code: number, glyph: number]> {
  const table = formatFour(at, cmap)
  const count = at.getUint16(table + 6) / 2
  const [ends, starts] = [table + 14, table + 16 + 2 * count]
  for (let i = 0; i < count; i++) {
    const start = at.getUint16(starts + 2 * i)
    const delta = at.getInt16(starts + 2 * (count + i))
    const rangeAt = starts + 2 * (2 * count + i)
    const range = at.getUint16(rangeAt)
    for (let code = start; code <= at.getUint16(ends + 2 * i) && code < 0xffff; code++) {
      const direct = range === 0 ? code : at.getUint16(rangeAt + range + 2 * (code - start))
      const glyph = range !== 0 && direct === 0 ? 0 : (direct + delta) & 0xffff
      if (glyph !== 0) yield [code, glyph]
    }
  }
}

function formatFour(at: DataView, cmap: number): number {
  for (let i = 0; i < at.getUint16(cmap + 2); i++) {
    const table = cmap + at.getUint32(cmap + 8 + 8 * i)
    if (at.getUint16(table) === 4) return table
  }
  throw new Error('The typeface has no character map of format 4')
}
