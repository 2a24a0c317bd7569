import { FORMULA_START, REASONS, reasonsOf } from './csv'
import { type Column, cellText, headed, type Schedule } from './schedule'
import { XML_HEAD, xmlText } from './xml'

/** Index of a cell format of the workbook; `STYLES` lists them in this order. */
export const STYLE = { plain: 0, head: 1, quoted: 2, decimal1: 3, decimal2: 4 } as const

const DECIMALS: Readonly<Record<number, number>> = { 1: STYLE.decimal1, 2: STYLE.decimal2 }

/** Longest text of a cell that spreadsheets take. */
const LONGEST = 32_767

/** One schedule as a sheet of a workbook (ECMA-376, SpreadsheetML): a head that stays in view, with a filter. */
export function worksheet(schedule: Schedule): string {
  const { columns, rows } = schedule
  const last = `${letters(columns.length)}${rows.length + 1}`
  const body = rows.map((row, i) => {
    const cells = columns.map((c, k) => {
      const cell = row.cells[c.key]!
      const at = `${letters(k)}${i + 2}`
      return typeof cell === 'number' ? number(at, cell, c) : text(at, cellText(cell, c))
    })
    const reasons = reasonsOf(columns.map((c) => row.cells[c.key]!))
    return `<row r="${i + 2}">${cells.join('')}${text(`${letters(columns.length)}${i + 2}`, reasons)}</row>`
  })
  return sheetXml(
    [...columns.map((c) => Math.max(c.wide, headed(c).length) + 2), REASONS.length + 20],
    [headRow([...columns.map(headed), REASONS]), ...body],
    `<autoFilter ref="A1:${last}"/>`,
  )
}

/** Lines of text under one another, as a sheet. */
export const textSheet = (head: string, lines: readonly string[]): string =>
  sheetXml(
    [120],
    [headRow([head]), ...lines.map((line, i) => `<row r="${i + 2}">${text(`A${i + 2}`, line)}</row>`)],
    '',
  )

function sheetXml(widths: readonly number[], rows: readonly string[], more: string): string {
  const cols = widths.map((w, i) => `<col min="${i + 1}" max="${i + 1}" width="${w}" customWidth="1"/>`)
  return `${XML_HEAD}<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews><cols>${cols.join('')}</cols><sheetData>${rows.join('')}</sheetData>${more}</worksheet>`
}

const headRow = (titles: readonly string[]): string =>
  `<row r="1">${titles.map((title, k) => text(`${letters(k)}1`, title, STYLE.head)).join('')}</row>`

const number = (at: string, value: number, { decimals }: Column): string =>
  `<c r="${at}" s="${DECIMALS[decimals ?? 0] ?? STYLE.plain}"><v>${value}</v></c>`

/** Text is stored as text and is never a formula; the format keeps it so when somebody edits the cell. */
function text(at: string, value: string, style?: number): string {
  if (value === '') return ''
  const format = style ?? (FORMULA_START.test(value) ? STYLE.quoted : STYLE.plain)
  return `<c r="${at}" s="${format}" t="inlineStr"><is><t xml:space="preserve">${xmlText(value.slice(0, LONGEST))}</t></is></c>`
}

/** Column letters: 0 is A, 26 is AA. */
export function letters(index: number): string {
  const before = Math.floor(index / 26)
  return (before > 0 ? letters(before - 1) : '') + String.fromCharCode(65 + (index % 26))
}
