import { line } from '../../kinds/draw'
import type { Design } from '../../model/design'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { moved } from '../block'
import { cautionMarks } from '../cautions'
import { frameMarks } from '../frame'
import { type Area, insideOf, PAPERS, type Paper } from '../paper'
import { baseMarks, drawingArea } from '../sheetbase'
import { type SheetWords, TITLE_BLOCK, titleBlockMarks } from '../titleblock'

/** A sheet for tables: its paper, the room for them, and what stands on every one. */
export interface Page {
  readonly paper: Paper
  readonly area: Area
  /** Columns of paper that narrow tables stand in side by side. */
  readonly columns: 1 | 2
  readonly base: (design: Design, words: SheetWords) => Mark[]
}

export type PageForm = 'A4-portrait' | 'A3-landscape'

/** Clear of the centring marks. */
const PAD: Millimetres = 6

const A4_UPRIGHT: Paper = { size: 'A4', w: 210, h: 297, columns: 4, rows: 6 }

export const pageOf = (form: PageForm): Page => (form === 'A4-portrait' ? portrait() : landscape())

function landscape(): Page {
  const paper = PAPERS.A3
  return {
    paper,
    area: padded(drawingArea(paper)),
    columns: 2,
    base: (design, words) => baseMarks(paper, design, words),
  }
}

/** The title block takes the whole width of an upright A4; the cautions stand above it. */
function portrait(): Page {
  const inside = insideOf(A4_UPRIGHT)
  const cautions = cautionMarks(inside.w - 4)
  const bottom = inside.y + inside.h - TITLE_BLOCK.h
  const top = bottom - cautions.h - 4
  return {
    paper: A4_UPRIGHT,
    area: padded({ ...inside, h: top - inside.y }),
    columns: 1,
    base: (design, words) => [
      ...frameMarks(A4_UPRIGHT),
      line([inside.x, top, inside.x + inside.w, top]),
      ...moved(cautions.marks, inside.x + 2, top + 2),
      ...moved(titleBlockMarks(design, words), inside.x, bottom),
    ],
  }
}

const padded = ({ x, y, w, h }: Area): Area => ({ x: x + PAD, y: y + 1, w: w - 2 * PAD, h: h - 4 })
