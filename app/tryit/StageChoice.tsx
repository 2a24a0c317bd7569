import { CHARGE_STAGES, type ChargeStage, type Control, type OperatingState } from '../../engine'
import { put } from './trial'

interface StageChoiceProps {
  readonly control: Control
  readonly name: string
  readonly state: OperatingState
}

/** The stage in which a charger charges. */
export function StageChoice({ control: { id, part }, name, state }: StageChoiceProps) {
  return (
    <label className="slider">
      <span>{name}</span>
      <select
        data-control-of={part}
        value={state.stages?.get(id) ?? 'bulk'}
        onChange={(e) => put({ set: 'stage', id, stage: e.target.value as ChargeStage })}
      >
        {CHARGE_STAGES.map((stage) => (
          <option key={stage} value={stage}>
            {NAMES[stage]}
          </option>
        ))}
      </select>
    </label>
  )
}

const NAMES: Readonly<Record<ChargeStage, string>> = {
  bulk: 'Bulk: full current',
  absorption: 'Absorption: holds voltage',
  float: 'Float: holds voltage',
}
