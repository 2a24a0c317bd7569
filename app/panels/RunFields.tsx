import {
  type Conductor,
  type ConductorChange,
  RUN_FIELDS,
  surroundOf,
  type Value,
  withOwnSizes,
} from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { FieldRow } from './FieldRow'
import { OwnCurrent } from './OwnCurrent'
import { SizeLock } from './SizeLock'

type Key = keyof typeof RUN_FIELDS

/** What a person sets on a conductor; on several at once, the first shows its values. */
export function RunFields({
  conductor,
  all = [conductor.id],
}: {
  conductor: Conductor
  all?: readonly string[]
}) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const own = useOpen((s) => s.design.ownConductors)
  const sizeField = withOwnSizes(own, conductor.size)
  const change = (label: string, set: ConductorChange) =>
    doEdit(all.length === 1 ? `${label} of ${conductor.number}` : `${label} of ${all.length} conductors`, {
      do: 'conductor',
      conductors: all,
      set,
    })
  const keys = (Object.keys(RUN_FIELDS) as Key[]).filter((key) => all.length === 1 || key !== 'number')
  return (
    <div className="fields">
      {keys.map((key) => (
        <FieldRow
          key={key}
          field={key === 'size' ? sizeField : RUN_FIELDS[key]}
          value={
            key === 'surround' ? surroundOf(conductor) : (conductor[key] ?? (key === 'size' ? '' : null))
          }
          disabled={disabled}
          {...(key === 'size'
            ? {
                beside: (
                  <SizeLock
                    locked={conductor.locked ?? false}
                    disabled={disabled}
                    onChange={(locked) => change(locked ? 'Lock the size' : 'Unlock the size', { locked })}
                  />
                ),
              }
            : {})}
          onChange={(value) => change(RUN_FIELDS[key].label, stored(key, value))}
        />
      ))}
      {all.length === 1 && (
        <OwnCurrent
          current={conductor.designCurrent}
          disabled={disabled}
          onChange={(designCurrent) => change('Design current', { designCurrent })}
        />
      )}
    </div>
  )
}

/** Empty has a meaning of its own for each key. */
function stored(key: Key, value: Value): ConductorChange {
  if (key === 'size' && value === '') return { size: null }
  if (key === 'bunched' && value === null) return { bunched: 1 }
  return { [key]: value }
}
