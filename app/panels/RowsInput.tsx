import { Plus, X } from 'lucide-react'
import type { Cell, Row, RowsField } from '../../engine'
import { CellInput } from './CellInput'

interface Props {
  readonly field: RowsField
  readonly rows: readonly Row[]
  readonly disabled: boolean
  readonly onChange: (rows: readonly Row[]) => void
  /** Where rows are not told by their place, any of them can be removed. */
  readonly onRemove?: (index: number) => void
}

/** A small table inside a part: the ways of a fuse block, the studs of a bar. */
export function RowsInput({ field, rows, disabled, onChange, onRemove }: Props) {
  const columns = Object.entries(field.columns)
  const set = (i: number, key: string, value: Cell) =>
    onChange(rows.map((row, k) => (k === i ? { ...row, [key]: value } : row)))
  const blank: Row = Object.fromEntries(columns.map(([key, column]) => [key, column.initial]))
  return (
    <div className="rows">
      <table aria-label={field.label}>
        <thead>
          <tr>
            <th scope="col">{field.each}</th>
            {columns.map(([key, column]) => (
              <th key={key} scope="col" title={column.about}>
                {column.label}
                {column.type === 'number' && column.unit ? `, ${column.unit}` : ''}
              </th>
            ))}
            <th>
              <span className="unseen">Remove</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place; terminals are keyed by it
            <tr key={i}>
              <th scope="row">{i + 1}</th>
              {columns.map(([key, column]) => (
                <td key={key}>
                  <CellInput
                    field={column.type === 'number' ? { ...column, unit: '' } : column}
                    value={row[key] ?? null}
                    label={`${field.each} ${i + 1}, ${column.label}`}
                    disabled={disabled || column.role === 'result'}
                    onChange={(value) => set(i, key, value)}
                  />
                </td>
              ))}
              <td>
                {(onRemove || (i === rows.length - 1 && i >= field.min)) && (
                  <button
                    type="button"
                    className="icon"
                    aria-label={`Remove ${field.each} ${i + 1}`}
                    disabled={disabled}
                    onClick={() => (onRemove ? onRemove(i) : onChange(rows.slice(0, -1)))}
                  >
                    <X size={14} aria-hidden />
                  </button>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length < field.max && (
        <button type="button" className="link" disabled={disabled} onClick={() => onChange([...rows, blank])}>
          <Plus size={14} aria-hidden /> One more {field.each}
        </button>
      )}
    </div>
  )
}
