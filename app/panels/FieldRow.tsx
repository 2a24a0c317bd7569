import { useId } from 'react'
import type { Field, Row, Value } from '../../engine'
import { CellInput } from './CellInput'
import { RowsInput } from './RowsInput'

interface Props {
  readonly field: Field
  readonly value: Value
  readonly disabled: boolean
  readonly onChange: (value: Value) => void
}

/** One field with its label; what it is for appears while it has the focus. */
export function FieldRow({ field, value, disabled, onChange }: Props) {
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
  const missing = field.required && (value === null || value === '')
  return (
    <div className={`field${missing ? ' missing' : ''}`}>
      <label className="label" htmlFor={id} title={field.about}>
        {field.label}
      </label>
      <CellInput
        id={id}
        field={field}
        value={Array.isArray(value) ? null : (value as Exclude<Value, readonly Row[]>)}
        disabled={disabled || field.role === 'result'}
        onChange={onChange}
      />
      {missing && <span className="missing-note">Not known: some checks are not made</span>}
      <span className="about">{field.about}</span>
    </div>
  )
}
