import { useState } from 'react'
import type { Conductor } from '../../engine'
import { NumberInput } from './NumberInput'

interface Props {
  readonly current: Conductor['designCurrent']
  readonly disabled: boolean
  readonly onChange: (current: Conductor['designCurrent']) => void
}

/** A designer's own figure in place of the worst case. It counts only with a written reason. */
export function OwnCurrent({ current, disabled, onChange }: Props) {
  const [open, setOpen] = useState(current !== null)
  const [amps, setAmps] = useState(current?.amps ?? null)
  const [reason, setReason] = useState(current?.reason ?? '')
  const ready = amps !== null && reason.trim() !== ''
  if (!open)
    return (
      <div className="field wide">
        <button type="button" className="link" disabled={disabled} onClick={() => setOpen(true)}>
          Set an own design current…
        </button>
      </div>
    )
  return (
    <fieldset className="own-current" disabled={disabled}>
      <legend>Own design current</legend>
      <NumberInput label="Own design current" unit="A" min={0} value={amps} onChange={setAmps} />
      <input
        aria-label="Reason for the own design current"
        placeholder="Reason, in writing"
        value={reason}
        onChange={(e) => setReason(e.target.value)}
      />
      <button
        type="button"
        className="plain"
        disabled={!ready}
        onClick={() => amps !== null && onChange({ amps, reason: reason.trim() })}
      >
        Use it
      </button>
      <button
        type="button"
        className="plain"
        onClick={() => {
          setOpen(false)
          if (current) onChange(null)
        }}
      >
        Use the computed one
      </button>
    </fieldset>
  )
}
