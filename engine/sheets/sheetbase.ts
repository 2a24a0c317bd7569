import { line } from '../kinds/draw'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import { moved } from './block'
import { cautionMarks } from './cautions'
import { frameMarks } from './frame'
import { type Area, insideOf, type Paper } from './paper'
import { type SheetWords, TITLE_BLOCK, titleBlockMarks } from './titleblock'

const PAD = 2

/** Height of the strip along the bottom that holds cautions and title block. */
function stripHeight(paper: Paper): number {
  const room = insideOf(paper).w - TITLE_BLOCK.w - 2 * PAD
  return Math.max(TITLE_BLOCK.h, cautionMarks(room).h + 2 * PAD)
}

/** Where the title block begins; the strip of cautions may reach higher beside it. */
export const titleBlockTop = (paper: Paper): number => {
  const { y, h } = insideOf(paper)
  return y + h - TITLE_BLOCK.h
}

/** What is left for the drawing: inside the frame, above the strip. */
export function drawingArea(paper: Paper): Area {
  const inside = insideOf(paper)
  return { ...inside, h: inside.h - stripHeight(paper) }
}

/** Everything that stands on every sheet: frame, cautions, title block. */
export function baseMarks(paper: Paper, design: Design, words: SheetWords): Mark[] {
  const inside = insideOf(paper)
  const top = inside.y + inside.h - stripHeight(paper)
  const right = inside.x + inside.w
  return [
    ...frameMarks(paper),
    line([inside.x, top, right - TITLE_BLOCK.w, top]),
    ...moved(cautionMarks(inside.w - TITLE_BLOCK.w - 2 * PAD).marks, inside.x + PAD, top + PAD),
    ...moved(titleBlockMarks(design, words), right - TITLE_BLOCK.w, inside.y + inside.h - TITLE_BLOCK.h),
  ]
}
