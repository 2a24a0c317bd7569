import type { Millimetres } from '../units'

/** A sheet of labels to be printed on: a grid that stands in the middle of the paper. */
export interface LabelStock {
  readonly title: string
  readonly paperW: Millimetres
  readonly paperH: Millimetres
  readonly columns: number
  readonly rows: number
  /** One label. */
  readonly w: Millimetres
  readonly h: Millimetres
  /** From one label to the next: the label and the gap beside it. */
  readonly pitchX: Millimetres
  readonly pitchY: Millimetres
}

const onA4 = (
  title: string,
  [columns, rows]: readonly [number, number],
  [w, h]: readonly [Millimetres, Millimetres],
  [pitchX, pitchY]: readonly [Millimetres, Millimetres] = [w, h],
): LabelStock => ({ title, paperW: 210, paperH: 297, columns, rows, w, h, pitchX, pitchY })

/** Common sizes on A4. From memory, trade practice: hold a print on plain paper against the stock at hand. */
export const LABEL_STOCKS = {
  small: onA4('Adhesive, 38.1 × 21.2 mm, 65 on a sheet', [5, 13], [38.1, 21.2], [40.6, 21.2]),
  middle: onA4('Adhesive, 48.5 × 25.4 mm, 40 on a sheet', [4, 10], [48.5, 25.4]),
  large: onA4('Adhesive, 70 × 37 mm, 24 on a sheet', [3, 8], [70, 37]),
  sleeves: onA4('Heat-shrink on a carrier, flat 50 × 12 mm, 36 on a sheet', [2, 18], [50, 12], [90, 14]),
} as const satisfies Readonly<Record<string, LabelStock>>

/** Top left corner of a label, counted row by row from 0. */
export function labelCorner(stock: LabelStock, place: number): readonly [x: Millimetres, y: Millimetres] {
  const { columns, rows, w, h, pitchX, pitchY, paperW, paperH } = stock
  const left = (paperW - (columns - 1) * pitchX - w) / 2
  const top = (paperH - (rows - 1) * pitchY - h) / 2
  return [left + (place % columns) * pitchX, top + Math.floor(place / columns) * pitchY]
}
