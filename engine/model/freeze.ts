import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate'
import { z } from 'zod'
import { sha256 } from '../math/sha256'

/** A text as it is kept in a revision: packed, as letters of base 64. A design file takes about a tenth of its length. */
export const packed = (text: string): string =>
  z.util.uint8ArrayToBase64(deflateSync(strToU8(text), { level: 9 }))

/** Longest text that is unpacked, bytes: a few hundred times a large design. */
const MOST_BYTES = 64_000_000
/** Packed bytes taken at a time: what they can grow to stays far below the limit. */
const SLICE = 16_384

/** The text again, or null where what is kept is no packed text, or grows beyond all bounds. Never throws. Linear. */
export function unpacked(letters: string): string | null {
  try {
    const bytes = z.util.base64ToUint8Array(letters)
    const pieces: Uint8Array[] = []
    let [total, ended] = [0, false]
    const inflate = new Inflate((piece, last) => {
      pieces.push(piece)
      total += piece.length
      ended ||= last
    })
    for (let at = 0; at < bytes.length; at += SLICE) {
      inflate.push(bytes.subarray(at, at + SLICE), at + SLICE >= bytes.length)
      if (total > MOST_BYTES) return null
    }
    return ended ? strFromU8(joined(pieces, total)) : null
  } catch {
    return null
  }
}

function joined(pieces: readonly Uint8Array[], total: number): Uint8Array {
  const all = new Uint8Array(total)
  let at = 0
  for (const piece of pieces) {
    all.set(piece, at)
    at += piece.length
  }
  return all
}

/** Digest of texts in their order, by SHA-256: any letter of any of them changes it. */
export const digestOf = (...texts: readonly string[]): string => sha256(strToU8(JSON.stringify(texts)))
