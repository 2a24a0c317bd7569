import type { XY } from '../../engine'

type ToSheet = (clientX: number, clientY: number) => XY | null

let toSheet: ToSheet = () => null

/** The canvas tells how a point of the page lies on the sheet. */
export const setToSheet = (f: ToSheet) => {
  toSheet = f
}

/** A point of the page, CSS px, on the sheet, mm; null where it is not over the sheet. */
export const sheetPoint: ToSheet = (x, y) => toSheet(x, y)
