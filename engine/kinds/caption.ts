import type { Unit } from '../model/fields'

/** Caption lines: figures with their unit, and nothing for what is not known. */

/** "100 A", or "? A" for a figure that was not typed: a gap must show on the drawing. */
export const figure = (value: number | null, unit: Unit): string =>
  value === null ? `? ${unit}` : `${plain(value)} ${unit}`

/** "100 A", or nothing. */
export const known = (value: number | null, unit: Unit): string => (value === null ? '' : figure(value, unit))

/** Lines of the parts that are not empty; parts of one line are set apart by commas. */
export const captions = (...lines: readonly (string | readonly string[])[]): readonly string[] =>
  lines.map((l) => (typeof l === 'string' ? l : l.filter((s) => s !== '').join(', '))).filter((l) => l !== '')

/** At most four significant figures, no trailing zeros. */
export const plain = (value: number): string => String(Number(value.toPrecision(4)))
