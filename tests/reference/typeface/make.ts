import { writeFileSync } from 'node:fs'
import { readWeight } from './read'
import { readTypeface, type Typeface } from './truetype'

/**
 * Writes engine/sheets/advances.ts from the typeface of the product, so that the engine can measure text without
 * reading files. Run again when the typeface changes: `npx tsx tests/reference/typeface/make.ts`.
 */

const ROOT = new URL('../../..', import.meta.url).pathname

export const typefaceOf = (weight: 'regular' | 'bold'): Typeface => readTypeface(readWeight(weight))

/** Runs of neighbouring characters: "code:width,width…", parted by spaces. A width that repeats is left empty. */
export function runsOf(face: Typeface): string[] {
  const runs: string[] = []
  let [previous, width] = [-2, -1]
  for (const [code, advance] of [...face.advances].sort(([a], [b]) => a - b)) {
    const written = advance === width && code === previous + 1 ? '' : `${advance}`
    if (code === previous + 1) runs[runs.length - 1] += `,${written}`
    else runs.push(`${code}:${written}`)
    ;[previous, width] = [code, advance]
  }
  return runs
}

function lines(runs: readonly string[]): string {
  const rows: string[] = []
  const pieces = runs.join(' ').match(/.{1,96}/gs) ?? []
  for (const piece of pieces) rows.push(`    '${piece}'`)
  return rows.join(' +\n')
}

export function source(): string {
  const { regular, bold } = { regular: typefaceOf('regular'), bold: typefaceOf('bold') }
  return `/**
 * Advance widths of the product's typeface, IBM Plex Sans Condensed (SIL Open Font License 1.1), in font units, written
 * by tests/reference/typeface/make.ts. Runs of neighbouring characters: "code:width,width…"; an empty width repeats the
 * one before it.
 */
export const ADVANCES = {
  unitsPerEm: ${regular.unitsPerEm},
  capHeight: ${regular.capHeight},
  regular:
${lines(runsOf(regular))},
  bold:
${lines(runsOf(bold))},
} as const
`
}

if (process.argv[1]?.endsWith('typeface/make.ts')) writeFileSync(`${ROOT}engine/sheets/advances.ts`, source())
