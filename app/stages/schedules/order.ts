import {
  cellText,
  isNotKnown,
  natural,
  type Schedule,
  type ScheduleCell,
  type ScheduleRow,
} from '../../../engine'

/** How a table is put in order: by a column, up or down. null: as the workshop pack has it. */
export type Order = { readonly column: string; readonly down: boolean } | null

/** Up, then down, then as it was. */
export function turned(order: Order, column: string): Order {
  if (order?.column !== column) return { column, down: false }
  return order.down ? null : { column, down: true }
}

/** Rows that hold every word of the filter somewhere, in order; what is empty or not known comes last either way. */
export function arranged(schedule: Schedule, filter: string, order: Order): readonly ScheduleRow[] {
  const wanted = filter.toLowerCase().split(/\s+/).filter(Boolean)
  const rows = schedule.rows.filter((row) => {
    if (wanted.length === 0) return true
    const words = [row.name, ...schedule.columns.map((c) => cellText(row.cells[c.key]!, c))]
      .join(' ')
      .toLowerCase()
    return wanted.every((word) => words.includes(word))
  })
  if (!order) return rows
  const { column, down } = order
  return rows
    .map((row, i) => ({ row, i, cell: row.cells[column] ?? '' }))
    .sort((a, b) => {
      const [missingA, missingB] = [isMissing(a.cell), isMissing(b.cell)]
      if (missingA || missingB) return Number(missingA) - Number(missingB) || a.i - b.i
      const by = compared(a.cell, b.cell)
      return (down ? -by : by) || a.i - b.i
    })
    .map(({ row }) => row)
}

const isMissing = (cell: ScheduleCell): boolean => cell === '' || isNotKnown(cell)

/** Figures before words; "unlimited" and the like are words. */
function compared(a: ScheduleCell, b: ScheduleCell): number {
  if (typeof a === 'number' && typeof b === 'number') return a - b
  if (typeof a === 'number') return -1
  if (typeof b === 'number') return 1
  return natural(String(a), String(b))
}
