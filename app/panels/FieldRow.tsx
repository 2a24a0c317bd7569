import { type ReactNode, useId } from 'react'
import { type Field, figure, type Row, type Value } from '../../engine'
import { CellInput } from './CellInput'
import { PrintedDate } from './PrintedDate'
import { RowsInput } from './RowsInput'

interface Props {
  readonly field: Field
  readonly value: Value
  readonly disabled: boolean
  /** Several things that differ in it are set at once: what they have, in a few words. */
  readonly differing?: string | undefined
  /** Stands to the right of the input. */
  readonly beside?: ReactNode
  readonly onChange: (value: Value) => void
}

/** One field with its label; what it is for appears while it has the focus. */
export function FieldRow({ field, value, disabled, differing, beside, onChange }: Props) {
  const id = useId()
  if (field.type === 'rows')
    return (
      <div className="field wide">
        <span className="label">{field.label}</span>
        <RowsInput
          field={field}
          rows={Array.isArray(value) ? (value as readonly Row[]) : []}
          disabled={disabled}
          onChange={onChange}
        />
      </div>
    )
  if (field.role === 'result')
    return (
      <div className="field">
        <span className="label" title={field.about}>
          {field.label}
        </span>
        <output className="result">{resultText(field, value)}</output>
      </div>
    )
  const missing = differing === undefined && field.required && (value === null || value === '')
  return (
    <div className={`field${missing ? ' missing' : ''}${beside ? ' two' : ''}`}>
      <label className="label" htmlFor={id} title={field.about}>
        {field.label}
      </label>
      <CellInput
        id={id}
        field={field}
        value={Array.isArray(value) ? null : (value as Exclude<Value, readonly Row[]>)}
        disabled={disabled}
        differing={differing}
        onChange={onChange}
      />
      {beside}
      {field.type === 'text' && field.form === 'date' && <PrintedDate date={String(value ?? '')} />}
      {missing && <span className="missing-note">Not known: some checks are not made</span>}
      <span className="about">{field.about}</span>
    </div>
  )
}

/** Computed from the other fields; a dash while they do not say enough. */
function resultText(field: Field, value: Value): string {
  if (typeof value !== 'number') return value === null || value === '' ? '–' : String(value)
  return figure(value, field.type === 'number' ? field.unit : '')
}
