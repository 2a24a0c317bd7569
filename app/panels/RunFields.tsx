import {
  type Conductor,
  type ConductorChange,
  conductorById,
  RUN_FIELDS,
  type Value,
  withOwnSizes,
} from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { differing, type RunKey, runValue } from './differing'
import { FieldRow } from './FieldRow'
import { OwnCurrent } from './OwnCurrent'
import { SizeLock } from './SizeLock'

/**
 * What a person sets on a conductor, or on several at once; where they differ, that is said. `apart`: fields of a feed and
 * its return that are set on the one that was picked, as the two have each their own.
 */
export function RunFields({
  conductor,
  all = [conductor.id],
  apart = [],
}: {
  conductor: Conductor
  all?: readonly string[]
  apart?: readonly RunKey[]
}) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const own = useOpen((s) => s.design.ownConductors)
  const sizeField = withOwnSizes(own, conductor.size)
  const design = useOpen((s) => s.design)
  const together = all.flatMap((id) => conductorById(design, id) ?? [])
  const change = (label: string, set: ConductorChange, on = all) =>
    doEdit(on.length === 1 ? `${label} of ${conductor.number}` : `${label} of ${on.length} conductors`, {
      do: 'conductor',
      conductors: on,
      set,
    })
  const keys = (Object.keys(RUN_FIELDS) as RunKey[]).filter((key) => all.length === 1 || key !== 'number')
  return (
    <div className="fields">
      {keys.map((key) => (
        <FieldRow
          key={key}
          field={key === 'size' ? sizeField : RUN_FIELDS[key]}
          value={runValue(conductor, key)}
          differing={
            apart.includes(key)
              ? undefined
              : differing(together, key, key === 'size' ? sizeField : RUN_FIELDS[key])
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
          onChange={(value) =>
            change(RUN_FIELDS[key].label, stored(key, value), apart.includes(key) ? [conductor.id] : all)
          }
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
function stored(key: RunKey, value: Value): ConductorChange {
  if (key === 'size' && value === '') return { size: null }
  if (key === 'bunched' && value === null) return { bunched: 1 }
  return { [key]: value }
}
