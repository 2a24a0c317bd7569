import type { TextMark } from '../model/marks'
import type { Millimetres } from '../units'
import { ADVANCES } from './advances'

/** Text is measured by the advance widths of the product's typeface, so that screen and paper agree to the hundredth. */

export type Weight = NonNullable<TextMark['weight']>

/** Height of a capital as a part of the type size. */
const CAPITAL = ADVANCES.capHeight / ADVANCES.unitsPerEm

/** Size of type, mm, that gives capitals of a height. */
export const typeSize = (height: Millimetres): Millimetres => height / CAPITAL

/** What stands in for characters that the typeface lacks. */
const STAND_INS: Readonly<Record<string, string>> = {
  '\u03a9': 'ohm',
  '\u2126': 'ohm',
  '\t': ' ',
  '\n': ' ',
  '\r': ' ',
  '\u2010': '-',
  '\u2011': '-',
  '\u2012': '-',
}

/** Nothing is seen of these: joiners, marks of direction, soft hyphens, choices of a variant. */
const UNSEEN = /\p{Default_Ignorable_Code_Point}/gu
const SPACE = /[\p{Zs}\u2028\u2029]/u

const WIDTHS: Readonly<Record<Weight, ReadonlyMap<string, number>>> = {
  regular: widths(ADVANCES.regular),
  bold: widths(ADVANCES.bold),
}

/** The text in characters that the typeface has; accents it lacks are dropped, other signs become "?". */
export function printable(text: string): string {
  let printed = ''
  for (const sign of text.normalize('NFC').replaceAll(UNSEEN, '')) printed += inType(sign) ?? '?'
  return printed
}

/** The signs of a text that no sign on paper stands for, each once. */
export function unprintable(text: string): string {
  const lost = new Set<string>()
  for (const sign of text.normalize('NFC').replaceAll(UNSEEN, '')) if (inType(sign) === null) lost.add(sign)
  return [...lost].join('')
}

/** What is printed for one sign: itself, a stand-in, its letter without the accent; null: nothing stands for it. */
function inType(sign: string): string | null {
  if (has(sign)) return sign
  return STAND_INS[sign] ?? (SPACE.test(sign) ? ' ' : bare(sign))
}

const has = (sign: string): boolean => WIDTHS.regular.has(sign) && sign >= ' '

/** Width of a text, mm, at a height of capitals. Signs that the typeface lacks count as what `printable` makes of them. */
export function widthOf(text: string, height: Millimetres, weight: Weight = 'regular'): Millimetres {
  const table = WIDTHS[weight]
  let units = 0
  for (const sign of text) {
    const width = table.get(sign)
    if (width !== undefined && sign >= ' ') units += width
    else for (const stand of printable(sign)) units += table.get(stand) ?? 0
  }
  return (units / ADVANCES.unitsPerEm) * typeSize(height)
}

/** Text cut to a width, with an ellipsis where something was cut. */
export function cutTo(
  width: Millimetres,
  text: string,
  height: Millimetres,
  weight: Weight = 'regular',
): string {
  if (widthOf(text, height, weight) <= width) return text
  const signs = [...text]
  while (signs.length > 0 && widthOf(`${signs.join('').trimEnd()}…`, height, weight) > width) signs.pop()
  return `${signs.join('').trimEnd()}…`
}

/** Text broken into lines at spaces; a word that is too long for a line is broken where it must. */
export function wrapTo(
  width: Millimetres,
  text: string,
  height: Millimetres,
  weight: Weight = 'regular',
): string[] {
  const lines: string[] = []
  for (const paragraph of bound(text).split('\n')) {
    let line = ''
    for (const word of paragraph.split(' ').flatMap((w) => pieces(width, w, height, weight))) {
      const longer = line === '' ? word : `${line} ${word}`
      if (widthOf(longer, height, weight) <= width) {
        line = longer
        continue
      }
      lines.push(line)
      line = word
    }
    lines.push(line)
  }
  return lines.map((line) => line.replaceAll(BOUND, ' '))
}

/** A space at which no line is broken. */
const BOUND = '\u00a0'

/** A figure keeps its unit. */
const bound = (text: string): string =>
  text.replaceAll(/(?<=\d) (?=(A|V|W|Ω|mΩ|Ah|Wh|m|mm|mm²|°C|%|s|mV|h|kA)(?![\w²]))/g, BOUND)

function pieces(width: Millimetres, word: string, height: Millimetres, weight: Weight): string[] {
  const found: string[] = []
  let piece = ''
  for (const sign of word) {
    if (piece !== '' && widthOf(piece + sign, height, weight) > width) {
      found.push(piece)
      piece = ''
    }
    piece += sign
  }
  return [...found, piece]
}

/** The letters that a sign is made of (Unicode compatibility decomposition), without accents that the typeface lacks. */
function bare(sign: string): string | null {
  const letters = [...sign.normalize('NFKD').replaceAll(/\p{M}/gu, '')].map((l) =>
    has(l) ? l : STAND_INS[l],
  )
  return letters.length > 0 && letters.every((l) => l !== undefined) ? letters.join('') : null
}

function widths(runs: string): Map<string, number> {
  const table = new Map<string, number>()
  for (const run of runs.split(' ')) {
    const [start = '', list = ''] = run.split(':')
    let width = 0
    list.split(',').forEach((written, i) => {
      if (written !== '') width = Number(written)
      const sign = String.fromCodePoint(Number(start) + i)
      table.set(sign, sign.replaceAll(UNSEEN, '') === '' ? 0 : width)
    })
  }
  return table
}
