import { textMark, USUAL } from '../block'
import type { Sheet } from '../sheet'

/** Right of the last field of the frame, between its two lines; far enough from the edge for any printer. */
const RIGHT = 12
const ABOVE_EDGE = 6.3

/** A sheet with its number in the pack, and how many pages the pack has. */
export const numbered = (sheet: Sheet, page: number, pages: number): Sheet => ({
  ...sheet,
  marks: [
    ...sheet.marks,
    textMark(
      sheet.w - RIGHT,
      sheet.h - ABOVE_EDGE,
      { text: `Page ${page} / ${pages}`, height: USUAL },
      { anchor: 'end' },
    ),
  ],
})
