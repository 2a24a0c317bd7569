import { ArrowDown, ArrowUp } from 'lucide-react'
import { Fragment, type KeyboardEvent } from 'react'
import {
  type Column,
  cellText,
  headed,
  isNotKnown,
  type Schedule,
  type ScheduleCell,
  type ScheduleRow,
} from '../../../engine'
import { showOnDrawing } from '../goto'
import { ArticleCells, ArticleHeads } from './ArticleCells'
import { type Order, turned } from './order'

interface Props {
  readonly schedule: Schedule
  readonly rows: readonly ScheduleRow[]
  readonly order: Order
  /** Key of the chosen row. */
  readonly chosen: string | null
  /** Article numbers, prices and weights are being entered. */
  readonly entering: boolean
  readonly onOrder: (order: Order) => void
  readonly onChoose: (key: string | null) => void
}

/** Columns of so few characters are not folded. */
const SHORT = 9

const ARTICLE = ['article', 'each', 'price', 'weight']

/** A table to sort by its heads and to walk through with the arrow keys; Enter goes to the drawing. */
export function ScheduleTable({ schedule, rows, order, chosen, entering, onOrder, onChoose }: Props) {
  const band = order ? undefined : schedule.columns.find((c) => c.band)
  const columns = schedule.columns.filter((c) => c !== band && !(entering && ARTICLE.includes(c.key)))
  const onKey = (e: KeyboardEvent<HTMLTableRowElement>, row: ScheduleRow) => {
    if (e.target !== e.currentTarget) return
    const step = e.key === 'ArrowDown' ? 1 : e.key === 'ArrowUp' ? -1 : 0
    if (step) {
      e.preventDefault()
      const next = rows[rows.indexOf(row) + step]
      if (!next) return
      onChoose(next.key)
      e.currentTarget
        .closest('table')
        ?.querySelector<HTMLElement>(`[data-row="${CSS.escape(next.key)}"]`)
        ?.focus()
    } else if (e.key === 'Enter') showOnDrawing(row)
    else if (e.key === ' ') {
      e.preventDefault()
      onChoose(row.key)
    } else if (e.key === 'Escape') onChoose(null)
  }
  const tabStop = rows.some((r) => r.key === chosen) ? chosen : rows[0]?.key
  return (
    <table aria-label={schedule.title}>
      <thead>
        <tr>
          {columns.map((c) => (
            <Head key={c.key} column={c} order={order} onOrder={onOrder} />
          ))}
          {entering && <ArticleHeads />}
        </tr>
      </thead>
      <tbody>
        {rows.map((row, i) => {
          const title = band && bandOf(row, band)
          const begins = band && (i === 0 || bandOf(rows[i - 1]!, band) !== title)
          return (
            <Fragment key={row.key}>
              {begins && (
                <tr className="band">
                  <th colSpan={columns.length + (entering ? 3 : 0)} scope="colgroup">
                    {title}
                  </th>
                </tr>
              )}
              <tr
                data-row={row.key}
                tabIndex={row.key === tabStop ? 0 : -1}
                aria-selected={row.key === chosen}
                onClick={() => onChoose(row.key)}
                onDoubleClick={() => showOnDrawing(row)}
                onKeyDown={(e) => onKey(e, row)}
              >
                {columns.map((c) => (
                  <Body key={c.key} column={c} cell={row.cells[c.key]!} />
                ))}
                {entering && <ArticleCells row={row} />}
              </tr>
            </Fragment>
          )
        })}
      </tbody>
    </table>
  )
}

const bandOf = (row: ScheduleRow, band: Column): string => cellText(row.cells[band.key]!, band)

function Head({ column, order, onOrder }: { column: Column; order: Order; onOrder: (order: Order) => void }) {
  const by = order?.column === column.key ? order : null
  return (
    <th scope="col" className={column.align} aria-sort={by ? (by.down ? 'descending' : 'ascending') : 'none'}>
      <button type="button" onClick={() => onOrder(turned(order, column.key))} title="Put in order by this">
        {headed(column)}
        {by && (by.down ? <ArrowDown size={13} aria-hidden /> : <ArrowUp size={13} aria-hidden />)}
      </button>
    </th>
  )
}

function Body({ column, cell }: { column: Column; cell: ScheduleCell }) {
  return (
    <td
      className={`${column.align}${column.wide <= SHORT ? ' short' : ''}`}
      title={isNotKnown(cell) ? `Not known: ${cell.notKnown}` : undefined}
    >
      {cellText(cell, column)}
    </td>
  )
}
