import { cellText, headed, isNotKnown, type Schedule, type ScheduleCell } from './schedule'

const BYTE_ORDER_MARK = '\ufeff'

/**
 * A schedule as comma-separated values after RFC 4180, with a byte order mark so that spreadsheets read it as UTF-8.
 * Figures are bare numbers. The last column says why a figure of the row is not known.
 */
export function csvOf(schedule: Schedule): string {
  const { columns, rows } = schedule
  const lines = [
    [...columns.map((c) => text(headed(c))), text(REASONS)],
    ...rows.map((row) => [
      ...columns.map((c) => {
        const cell = row.cells[c.key]!
        return typeof cell === 'number' ? String(cell) : text(cellText(cell, c))
      }),
      text(reasonsOf(columns.map((c) => row.cells[c.key]!))),
    ]),
  ]
  return BYTE_ORDER_MARK + lines.map((line) => `${line.join(',')}\r\n`).join('')
}

/** Title of the last column of tables that leave the product. */
export const REASONS = 'Not known, because'

/** The reasons behind the dashes of one row, each once. */
export const reasonsOf = (cells: readonly ScheduleCell[]): string =>
  [...new Set(cells.flatMap((c) => (isNotKnown(c) ? [c.notKnown] : [])))].join('; ')

/** First characters that make a spreadsheet take text for a formula, after the OWASP guidance on CSV injection. */
export const FORMULA_START = /^[=+\-@\t\r\n]/

/** Text of one field: kept from being read as a formula, then quoted where RFC 4180 asks for it. */
function text(value: string): string {
  const tame = FORMULA_START.test(value) ? `'${value}` : value
  return /[",\r\n]/.test(tame) || tame !== tame.trim() ? `"${tame.replaceAll('"', '""')}"` : tame
}
