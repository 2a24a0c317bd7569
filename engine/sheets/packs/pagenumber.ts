import { textMark, USUAL } from '../block'
import type { Sheet } from '../sheet'

/** In the corner of the frame, between its two lines, clear of the numeral of the last field. */
const RIGHT = 6.5
const ABOVE_EDGE = 6.3

/** A sheet with its number in the pack: "Page 3 / 12". */
export const numbered = (sheet: Sheet, text: string): Sheet => ({
  ...sheet,
  marks: [
    ...sheet.marks,
    textMark(sheet.w - RIGHT, sheet.h - ABOVE_EDGE, { text, height: USUAL }, { anchor: 'end' }),
  ],
})
