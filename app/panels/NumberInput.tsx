import { useEffect, useId, useState } from 'react'
import type { Unit } from '../../engine'
import { readNumber } from './readnumber'

interface Props {
  readonly id?: string
  readonly label?: string
  readonly unit: Unit
  readonly value: number | null
  readonly min?: number
  readonly max?: number
  readonly whole?: boolean
  readonly standard?: readonly number[]
  readonly disabled?: boolean
  readonly onChange: (value: number | null) => void
}

/** A number with its unit. What cannot be read, or lies outside its limits, is said and not stored. */
export function NumberInput(props: Props) {
  const { id, label, unit, value, standard, disabled, onChange } = props
  const [text, setText] = useState(shown(value))
  const [wrong, setWrong] = useState<string | null>(null)
  const listId = useId()
  const wrongId = useId()
  useEffect(() => {
    setText(shown(value))
    setWrong(null)
  }, [value])

  const commit = () => {
    const read = readNumber(text, props)
    setWrong(read.wrong)
    if (read.wrong === null && read.value !== value) onChange(read.value)
  }
  return (
    <span className="number">
      <input
        id={id}
        aria-label={label}
        inputMode="decimal"
        autoComplete="off"
        value={text}
        disabled={disabled}
        aria-invalid={wrong !== null}
        aria-describedby={wrong ? wrongId : undefined}
        list={standard ? listId : undefined}
        onChange={(e) => setText(e.target.value)}
        onBlur={commit}
        onKeyDown={(e) => e.key === 'Enter' && commit()}
      />
      {unit && <span className="unit">{unit}</span>}
      {standard && (
        <datalist id={listId}>
          {standard.map((n) => (
            <option key={n} value={n} />
          ))}
        </datalist>
      )}
      {wrong && (
        <span id={wrongId} className="wrong" role="alert">
          {wrong}
        </span>
      )}
    </span>
  )
}

const shown = (value: number | null): string => (value === null ? '' : String(value))
