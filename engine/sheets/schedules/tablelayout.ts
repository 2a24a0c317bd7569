import type { Millimetres } from '../../units'
import { LEAST, USUAL } from '../block'
import { type Weight, widthOf } from '../measure'
import { BOX } from './boxmarks'
import { type Column, cellText, headed, type Schedule } from './schedule'

/** Columns that share one strip of the table, the first above the others. */
export interface Strip {
  readonly columns: readonly Column[]
  readonly x: Millimetres
  readonly w: Millimetres
}

export interface TableLayout {
  readonly strips: readonly Strip[]
  readonly w: Millimetres
  /** Lettering of heads and rows. */
  readonly height: Millimetres
  readonly cramped: boolean
}

/** Free room left and right of the words of a cell. */
export const PAD: Millimetres = 1.2

/** Words of the strip together need at least this much of one line before lettering is made smaller. */
const ROOMY = 0.75

/**
 * Strips of a table that is to stand in a width: the larger lettering where it fits without much folding, otherwise
 * the least. `narrow`: columns that may stand below another one do. Cramped: some word has to be broken.
 */
export function layTable(schedule: Schedule, width: Millimetres, narrow: boolean): TableLayout {
  const groups = groupsOf(schedule, narrow)
  const large = wishesOf(schedule, groups, USUAL)
  if (sum(large, 'least') <= width && sum(large, 'natural') * ROOMY <= width)
    return layout(groups, large, width, USUAL, false)
  const wishes = wishesOf(schedule, groups, LEAST)
  if (sum(wishes, 'least') <= width) return layout(groups, wishes, width, LEAST, false)
  const most = width / groups.length
  const capped = wishes.map(({ least, natural }) => ({ least: Math.min(least, most), natural }))
  return layout(groups, capped, width, LEAST, true)
}

function layout(
  groups: readonly (readonly Column[])[],
  wishes: readonly Wish[],
  width: Millimetres,
  height: Millimetres,
  cramped: boolean,
): TableLayout {
  const widths = shared(wishes, width)
  let x = 0
  const strips = groups.map((columns, i): Strip => {
    const strip = { columns, x, w: widths[i]! }
    x += strip.w
    return strip
  })
  return { strips, w: x, height, cramped }
}

function groupsOf({ columns }: Schedule, narrow: boolean): Column[][] {
  const shown = columns.filter((c) => c.band === undefined)
  if (!narrow) return shown.map((c) => [c])
  return shown
    .filter((c) => c.below === undefined)
    .map((c) => [c, ...shown.filter((other) => other.below === c.key)])
}

/** What a row is called by stands out. */
export const weightOf = (firstStrip: boolean, place: number): Weight =>
  firstStrip && place === 0 ? 'bold' : 'regular'

/** Figures stay with their units, numbers with what they count: "70 °C" and "stud 2" are not broken. */
export const glued = (text: string): string =>
  text.replace(/ (?=(?:°C|mm²|[AVm%]|\S{1,2})(?:$|[ ,;)]))/g, '\u00a0')

/** Width of one character, as a part of the height, where room is kept for something to be written in. */
const CHARACTER = 0.75

interface Wish {
  /** Longest word. */
  readonly least: Millimetres
  /** Longest cell on one line. */
  readonly natural: Millimetres
}

const wishesOf = (
  schedule: Schedule,
  groups: readonly (readonly Column[])[],
  height: Millimetres,
): readonly Wish[] => groups.map((columns, i) => wishOf(schedule, columns, height, i === 0))

const sum = (wishes: readonly Wish[], of: keyof Wish): Millimetres =>
  wishes.reduce((all, wish) => all + wish[of], 0)

function wishOf({ rows }: Schedule, columns: readonly Column[], height: Millimetres, first: boolean): Wish {
  let [least, natural] = [0, 0]
  const count = (text: string, weight: Weight, whole: boolean): void => {
    for (const word of text.split(' ')) least = Math.max(least, widthOf(word, height, weight))
    if (whole) natural = Math.max(natural, widthOf(text, height, weight))
  }
  columns.forEach((column, i) => {
    count(headed(column), 'bold', false)
    const weight = weightOf(first, i)
    if (column.box) natural = Math.max(natural, BOX)
    else for (const row of rows) count(glued(cellText(row.cells[column.key]!, column)), weight, true)
    if (rows.every((row) => row.cells[column.key] === ''))
      natural = Math.max(natural, column.wide * CHARACTER * height)
  })
  // A hair more, so that a word that just fits is not broken by rounding.
  const [l, n] = [least + 2 * PAD + 0.1, natural + 2 * PAD + 0.1]
  return { least: l, natural: Math.max(l, n) }
}

/** Every strip gets what it wishes up to a common bound, and never less than its longest word. */
function shared(wishes: readonly Wish[], width: Millimetres): Millimetres[] {
  const at = (bound: Millimetres) => wishes.map((w) => Math.min(w.natural, Math.max(w.least, bound)))
  const total = (bound: Millimetres) => at(bound).reduce((a, b) => a + b, 0)
  let [low, high] = [0, Math.max(0, ...wishes.map((w) => w.natural))]
  if (total(high) <= width) return at(high)
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2
    if (total(middle) <= width) low = middle
    else high = middle
  }
  return at(low)
}
