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
  /** In a title, where a kind of label stands on several stocks: "heat-shrink 6.4 mm". */
  readonly short?: string
  /** Free room inside the edge of one. Default 1.5 mm: printers are off by a millimetre. */
  readonly pad?: Millimetres
}

const onA4 = (
  title: string,
  [columns, rows]: readonly [number, number],
  [w, h]: readonly [Millimetres, Millimetres],
  [pitchX, pitchY]: readonly [Millimetres, Millimetres] = [w, h],
): LabelStock => ({ title, paperW: 210, paperH: 297, columns, rows, w, h, pitchX, pitchY })

/** Common sizes on A4. From memory, trade practice: hold a print on plain paper against the stock at hand. */
export const LABEL_STOCKS = {
  tiny: onA4('Adhesive, 17.8 × 10 mm, 270 on a sheet', [10, 27], [17.8, 10], [20.3, 10]),
  small: onA4('Adhesive, 38.1 × 21.2 mm, 65 on a sheet', [5, 13], [38.1, 21.2], [40.6, 21.2]),
  middle: onA4('Adhesive, 48.5 × 25.4 mm, 40 on a sheet', [4, 10], [48.5, 25.4]),
  large: onA4('Adhesive, 70 × 37 mm, 24 on a sheet', [3, 8], [70, 37]),
  sleeves: onA4('Heat-shrink on a carrier, flat 50 × 12 mm, 36 on a sheet', [2, 18], [50, 12], [90, 14]),
} as const satisfies Readonly<Record<string, LabelStock>>

/** Inner diameters in which heat-shrink of 2:1 is sold, mm: eighths of an inch and their halves. From memory, trade practice. */
const SLEEVES = [3.2, 4.8, 6.4, 9.5, 12.7, 19.1, 25.4] as const
/** A sleeve is pushed over the barrel of the lug: so much wider than the insulation. Common practice, no source. */
const PUSHED_OVER = 1.25

/** Marker sleeves of one diameter on a carrier of A4: 50 mm long, flat; half the circumference is printed on. */
function sleeveStock(innerMm: Millimetres): LabelStock {
  const flat = Math.floor(((innerMm * Math.PI) / 2) * 10) / 10
  const rows = Math.floor(270 / (flat + 3))
  const title = `Heat-shrink ${innerMm} mm on a carrier, flat 50 × ${flat} mm, ${2 * rows} on a sheet`
  return {
    ...onA4(title, [2, rows], [50, flat], [90, flat + 3]),
    short: `heat-shrink ${innerMm} mm`,
    pad: 0.6,
  }
}

/** The narrowest sleeve that passes over the end of a conductor and still shrinks on to it; null: there is none. */
export function sleeveFor(overInsulationMm: Millimetres): LabelStock | null {
  const inner = SLEEVES.find((d) => d >= overInsulationMm * PUSHED_OVER)
  return inner === undefined ? null : sleeveStock(inner)
}

/** A sheet of the person's own, in the middle of A4 or of another paper, without gaps unless they are told. */
export const ownStock = (own: Omit<LabelStock, 'title'>): LabelStock => ({
  ...own,
  title: `Own size, ${own.w} × ${own.h} mm, ${own.columns * own.rows} on a sheet`,
})

/** Top left corner of a label, counted row by row from 0. */
export function labelCorner(stock: LabelStock, place: number): readonly [x: Millimetres, y: Millimetres] {
  const { columns, rows, w, h, pitchX, pitchY, paperW, paperH } = stock
  const left = (paperW - (columns - 1) * pitchX - w) / 2
  const top = (paperH - (rows - 1) * pitchY - h) / 2
  return [left + (place % columns) * pitchX, top + Math.floor(place / columns) * pitchY]
}
