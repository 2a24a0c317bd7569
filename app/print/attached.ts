import { unzlibSync } from 'fflate'

/** What was found inside a PDF: the text of each attached file that could be read, and what is wrong with the others. */
export interface Attached {
  readonly texts: readonly string[]
  /** Plain sentences. */
  readonly faults: readonly string[]
}

/** A PDF says so within its first kilobyte (ISO 32000-1, annex H, note 13). */
export const isPdf = (bytes: Uint8Array): boolean => latin(bytes.subarray(0, 1024)).includes('%PDF-')

/**
 * Reads files attached to a PDF (ISO 32000-1, 7.11.4), as this project writes them and as other programs store them
 * again: their streams are sought in the bytes, so that a damaged table of places does no harm. A stream that was cut
 * off or altered is refused: its length and its check sum (Adler-32 of RFC 1950) have to be right. Never throws.
 */
export function attachedIn(bytes: Uint8Array): Attached {
  const text = latin(bytes)
  if (/\/Encrypt\s+(\d+\s+\d+\s+R|<<)/.test(text))
    return { texts: [], faults: ['The PDF is locked with a password.'] }
  const texts: string[] = []
  const faults: string[] = []
  for (const { index } of text.matchAll(/\/Type\s*\/EmbeddedFile\b/g)) {
    const found = fileAt(bytes, text, index)
    if ('fault' in found) faults.push(found.fault)
    else texts.push(found.text)
  }
  return { texts, faults }
}

function fileAt(
  bytes: Uint8Array,
  text: string,
  at: number,
): { readonly text: string } | { readonly fault: string } {
  const open = text.indexOf('stream', at)
  const head = text.slice(Math.max(0, text.lastIndexOf(' obj', at)), open < 0 ? text.length : open)
  const start = open < 0 ? -1 : open + (text.startsWith('\r\n', open + 6) ? 8 : 7)
  const end = start < 0 ? -1 : endOf(text, head, start)
  if (end < 0) return { fault: 'The file inside the PDF is cut off.' }
  const size = Number(/\/Size\s+(\d+)/.exec(head)?.[1] ?? Number.NaN)
  const content = unpacked(bytes.subarray(start, end), head)
  if (content === null || (!Number.isNaN(size) && size !== content.length))
    return { fault: 'The file inside the PDF is damaged.' }
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(content) }
  } catch {
    return { fault: 'The file inside the PDF is not text.' }
  }
}

/** End of a stream: by its length where that leads to the word that ends it, otherwise at the next such word. */
function endOf(text: string, head: string, start: number): number {
  const length = /\/Length\s+(\d+)(?!\s+\d+\s+R)/.exec(head)
  const end = start + Number(length?.[1] ?? Number.NaN)
  if (/^\s*endstream/.test(text.slice(end, end + 16))) return end
  const next = text.indexOf('endstream', start)
  return next < 0 ? -1 : next
}

/** null: damaged, or packed in a way that is not known here. */
function unpacked(packed: Uint8Array, head: string): Uint8Array | null {
  const filters = /\/Filter\s*(?:\[([^\]]*)\]|(\/\w+))/.exec(head)
  const names = (filters?.[1] ?? filters?.[2] ?? '').match(/\/\w+/g) ?? []
  if (names.length === 0) return packed
  if (names.length > 1 || names[0] !== '/FlateDecode') return null
  try {
    const content = unzlibSync(packed)
    return sumStands(packed, adler32(content)) ? content : null
  } catch {
    return null
  }
}

/** A stream ends with the sum, but for a line end that may stand before the closing word. */
function sumStands(packed: Uint8Array, sum: number): boolean {
  const view = new DataView(packed.buffer, packed.byteOffset, packed.byteLength)
  return [0, 1, 2].some((off) => packed.length >= 6 + off && view.getUint32(packed.length - 4 - off) === sum)
}

function adler32(bytes: Uint8Array): number {
  let [a, b] = [1, 0]
  for (const byte of bytes) {
    a = (a + byte) % 65521
    b = (b + a) % 65521
  }
  return b * 65536 + a
}

/** One character a byte. */
const latin = (bytes: Uint8Array): string => new TextDecoder('latin1').decode(bytes)
