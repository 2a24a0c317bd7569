import { listed } from '../../words/names'
import { isNotKnown, natural, type Schedule } from './schedule'

/** One reason for dashes: in which columns and rows. */
export interface Missing {
  readonly reason: string
  /** Titles of the columns. */
  readonly columns: readonly string[]
  /** Names of the rows. */
  readonly rows: readonly string[]
}

/** The reasons behind the dashes of a schedule, each once, in the order in which they are met. */
export function missingIn({ columns, rows }: Schedule): Missing[] {
  const found = new Map<string, { columns: Set<string>; rows: Set<string> }>()
  for (const row of rows)
    for (const column of columns) {
      const cell = row.cells[column.key]!
      if (!isNotKnown(cell)) continue
      const entry = found.get(cell.notKnown) ?? { columns: new Set(), rows: new Set() }
      entry.columns.add(column.title)
      entry.rows.add(row.name)
      found.set(cell.notKnown, entry)
    }
  return [...found].map(([reason, entry]) => ({
    reason,
    columns: [...entry.columns],
    rows: [...entry.rows].sort(natural),
  }))
}

/** "Not known (Drop): no length: W3, W9." */
export const missingWords = ({ reason, columns, rows }: Missing): string =>
  `${columns.join(', ')}: ${reason.replace(/\.$/, '')} (${listed(rows, 24)}).`
