import {
  type Control,
  type Design,
  figure,
  type NoOperatingPoint,
  type OperatingPoint,
  type OperatingState,
  partName,
} from '../../engine'
import { flipOf, isOn, stateWords } from './flip'
import { StageChoice } from './StageChoice'
import { put } from './trial'

interface ControlRowProps {
  readonly control: Control
  readonly design: Design
  readonly state: OperatingState
  readonly point: OperatingPoint | NoOperatingPoint
}

/** One thing that can be set: a slider for what has degrees, else a switch. */
export function ControlRow({ control, design, state, point }: ControlRowProps) {
  const { id, part } = control
  const name = [partName(design, part), control.name].filter(Boolean).join(' · ')
  const words = stateWords(control, state)
  const amps = point.ok ? ampsOf(control, point) : undefined
  return (
    <li className={isOn(control, state) ? 'on' : 'off'}>
      {control.is === 'stage' ? (
        <StageChoice control={control} name={name} state={state} />
      ) : control.is === 'source' || control.is === 'charge' ? (
        <label className="slider">
          <span>{name}</span>
          <input
            type="range"
            min={0}
            max={100}
            step={5}
            data-control-of={part}
            aria-valuetext={words}
            value={Math.round((state[control.is === 'source' ? 'sources' : 'charge'].get(id) ?? 0) * 100)}
            onChange={(e) => put({ set: control.is, id, share: Number(e.target.value) / 100 })}
          />
        </label>
      ) : (
        <button
          type="button"
          role="switch"
          aria-checked={isOn(control, state)}
          data-control-of={part}
          onClick={() => put(flipOf(control, state))}
        >
          <span className="lever" aria-hidden />
          <span>{name}</span>
        </button>
      )}
      <span className="state">{control.is === 'stage' ? '' : words}</span>
      <span className="amps">{amps === undefined ? '' : figure(amps, 'A')}</span>
    </li>
  )
}

/** Of a source what it gives, of a load what it takes, of a battery either: what it takes is below 0. */
function ampsOf({ is, id }: Control, { devices, branches }: OperatingPoint): number | undefined {
  const own = devices.get(id)?.amps
  if (own === undefined) return Math.abs(branches.get(id) ?? 0)
  if (is === 'charge') return own
  return Math.max(0, is === 'load' ? -own : own)
}
