import { line, rect } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { LEAST, textMark } from '../block'

/** Columns of the record: what and where, what is expected, then boxes to be written in. */
export interface Columns {
  readonly what: Millimetres
  readonly expected: Millimetres
  readonly found: Millimetres
  readonly result: Millimetres
  readonly who: Millimetres
  readonly width: Millimetres
}

/** Left edges of the columns for a width of paper. */
export function columnsFor(width: Millimetres): Columns {
  const [found, result, who] = [24, 14, 26]
  const left = width - found - result - who
  return {
    what: 0,
    expected: left * 0.62,
    found: left,
    result: left + found,
    who: left + found + result,
    width,
  }
}

/** Height of the head that is said again on every page. */
export const HEAD: Millimetres = 5.5

export function headMarks(c: Columns): Mark[] {
  const titles: readonly (readonly [Millimetres, string])[] = [
    [c.what, 'Reading, and where to probe'],
    [c.expected, 'Expected'],
    [c.found, 'Measured'],
    [c.result, 'Result'],
    [c.who, 'Name, date'],
  ]
  return [
    rect(0, 0, c.width, HEAD - 1, { pen: 'thin', ink: 'tint', fill: 'tint' }),
    line([0, HEAD - 1, c.width, HEAD - 1]),
    ...titles.map(([x, text]) => textMark(x + 1, 3.2, { text, height: LEAST, weight: 'bold' })),
  ]
}
