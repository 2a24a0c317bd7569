import type { Cell, CellField } from '../../engine'
import { NumberInput } from './NumberInput'
import { TextInput } from './TextInput'

interface Props {
  readonly field: CellField
  readonly value: Cell
  readonly id?: string
  /** Spoken name where no <label> stands beside it. */
  readonly label?: string
  readonly disabled?: boolean
  /** Shown in place of the value while several things that differ are set at once. */
  readonly differing?: string | undefined
  readonly onChange: (value: Cell) => void
}

/** One input for one field of any kind: the whole card is made of these. */
export function CellInput({ field, value, id, label, disabled = false, differing, onChange }: Props) {
  const named = { ...(id ? { id } : {}), ...(label ? { label } : {}), disabled }
  switch (field.type) {
    case 'number':
      return (
        <NumberInput
          {...named}
          unit={field.unit}
          value={typeof value === 'number' && differing === undefined ? value : null}
          placeholder={differing}
          {...(field.min === undefined ? {} : { min: field.min })}
          {...(field.max === undefined ? {} : { max: field.max })}
          {...(field.whole ? { whole: true } : {})}
          {...(field.standard ? { standard: field.standard } : {})}
          onChange={onChange}
        />
      )
    case 'text':
      return (
        <TextInput
          {...named}
          value={typeof value === 'string' && differing === undefined ? value : ''}
          placeholder={differing}
          {...(field.lines ? { lines: field.lines } : {})}
          {...(field.form && isDateOrNone(value) ? { type: field.form } : {})}
          onChange={onChange}
        />
      )
    case 'choice':
      return (
        <select
          id={id}
          aria-label={label}
          disabled={disabled}
          value={differing === undefined ? String(value) : DIFFERING}
          onChange={(e) => onChange(e.target.value)}
        >
          {differing !== undefined && (
            <option value={DIFFERING} disabled>
              {differing}
            </option>
          )}
          {Object.entries(field.options).map(([key, text]) => (
            <option key={key} value={key}>
              {text}
            </option>
          ))}
        </select>
      )
    case 'flag':
      return (
        <input
          type="checkbox"
          id={id}
          aria-label={label}
          disabled={disabled}
          ref={(box) => {
            if (box) box.indeterminate = differing !== undefined
          }}
          checked={value === true && differing === undefined}
          onChange={(e) => onChange(e.target.checked)}
        />
      )
  }
}

/** Key of the choice that only says that they differ. */
const DIFFERING = 'differing'

/** A date that is written otherwise, as files from elsewhere may have it, stays text: a calendar would show nothing. */
const isDateOrNone = (value: Cell): boolean => value === '' || /^\d{4}-\d\d-\d\d$/.test(String(value))
