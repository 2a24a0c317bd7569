import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import type { Unit } from '../../engine'
import { say } from '../store/say'
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
  readonly placeholder?: string | undefined
  readonly onChange: (value: number | null) => void
}

/**
 * A number with its unit. What cannot be read, or lies outside its limits, is said and not stored. Enter stores and
 * leaves the field, so that undo is the design's again; Escape leaves it as it was.
 */
export function NumberInput(props: Props) {
  const { id, label, unit, value, standard, disabled, placeholder, onChange } = props
  const [text, setText] = useState(shown(value))
  const [wrong, setWrong] = useState<string | null>(null)
  const listId = useId()
  const wrongId = useId()
  useEffect(() => {
    setText(shown(value))
    setWrong(null)
    refused.current = null
  }, [value])

  /** What was typed and could not be kept; told when the field goes with its card. */
  const refused = useRef<string | null>(null)
  useEffect(
    () => () => {
      if (refused.current !== null) say(refused.current)
    },
    [],
  )

  /** Set while the field is left by a key that has dealt with the text already. */
  const settled = useRef(false)

  const commit = (): boolean => {
    const read = readNumber(text, props)
    setWrong(read.wrong)
    refused.current = read.wrong && `“${text}” was not kept. ${read.wrong}.`
    if (read.wrong === null && read.value !== value) onChange(read.value)
    return read.wrong === null
  }
  const leave = (field: HTMLInputElement) => {
    settled.current = true
    field.blur()
    settled.current = false
  }
  const byKey = (e: KeyboardEvent<HTMLInputElement>) => {
    if (e.key === 'Enter' && commit()) leave(e.currentTarget)
    if (e.key !== 'Escape') return
    e.stopPropagation()
    setText(shown(value))
    setWrong(null)
    refused.current = null
    leave(e.currentTarget)
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
        placeholder={placeholder}
        aria-invalid={wrong !== null}
        aria-describedby={wrong ? wrongId : undefined}
        list={standard ? listId : undefined}
        onChange={(e) => setText(e.target.value)}
        onBlur={() => settled.current || commit()}
        onKeyDown={byKey}
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
