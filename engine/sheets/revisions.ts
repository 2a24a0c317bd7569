import { line, rect } from '../kinds/draw'
import type { Design } from '../model/design'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { standingWords } from '../words/standing'
import { LEAST, textMark } from './block'
import { cutTo } from './measure'
import { TITLE_BLOCK } from './titleblock'

/** One line of the revision table. */
export interface RevisionRow {
  readonly number: string
  /** ISO 8601. */
  readonly date: string
  readonly by: string
  readonly reason: string
}

/**
 * Issued revisions, the oldest first, and below them what has not been issued: the only place that says where the rows
 * come from.
 */
export function revisionRows(design: Design): readonly RevisionRow[] {
  const { revisions = [], settings: s } = design
  const { revision, status, issued } = standingWords(design)
  const rows = revisions.map(({ number, date, by, reason }) => ({ number, date, by, reason }))
  if (issued) return rows
  if (rows.length > 0) return [...rows, { number: revision, date: '', by: '', reason: status }]
  return revision === '' ? [] : [{ number: revision, date: s.date, by: s.designer, reason: status }]
}

const ROW: Millimetres = 4.5
/** Rows that the table shows; of older ones it says how many there are. */
const MOST = 8

const COLUMNS = [
  { title: 'Revision', w: 18, of: (r: RevisionRow) => r.number },
  { title: 'Date', w: 22, of: (r: RevisionRow) => r.date },
  { title: 'By', w: 40, of: (r: RevisionRow) => r.by },
  { title: 'Reason', w: 100, of: (r: RevisionRow) => r.reason },
] as const

/**
 * The revision table as it stands on top of the title block, the newest row nearest to it, the head above; from its
 * top left corner. No revision: no table.
 */
export function revisionTable(design: Design): { readonly h: Millimetres; readonly marks: readonly Mark[] } {
  const all = revisionRows(design)
  if (all.length === 0) return { h: 0, marks: [] }
  const shown = all.slice(-MOST)
  const older = all.length - shown.length
  const h = (shown.length + 1) * ROW
  const edges = COLUMNS.map((_, i) => COLUMNS.slice(0, i).reduce((sum, c) => sum + c.w, 0))
  const row = (y: Millimetres, words: readonly string[], weight: 'regular' | 'bold'): Mark[] =>
    words.map((text, i) =>
      textMark(edges[i]! + 1.5, y + ROW / 2 + LEAST / 2, {
        text: cutTo(COLUMNS[i]!.w - 3, text, LEAST, weight),
        weight,
      }),
    )
  const head = COLUMNS.map((c, i) =>
    i === 3 && older > 0 ? `${c.title} (${older} older not shown)` : c.title,
  )
  return {
    h,
    marks: [
      rect(0, 0, TITLE_BLOCK.w, h, { pen: 'strong', fill: 'paper' }),
      ...edges.slice(1).map((x) => line([x, 0, x, h], { pen: 'thin' })),
      ...shown.map((_, i) => line([0, (i + 1) * ROW, TITLE_BLOCK.w, (i + 1) * ROW], { pen: 'thin' })),
      ...row(0, head, 'bold'),
      ...shown.flatMap((r, i) =>
        row(
          (i + 1) * ROW,
          COLUMNS.map((c) => c.of(r)),
          'regular',
        ),
      ),
    ],
  }
}
