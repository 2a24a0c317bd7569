import type { Settings, Value } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { DESIGN_FIELDS } from './designfields'
import { FieldRow } from './FieldRow'
import { Legend } from './Legend'

/** Nothing is selected: the design itself, and what the lines and marks mean. */
export function DesignCard() {
  const settings = useOpen((s) => s.design.settings)
  const disabled = useOpen((s) => s.hold !== 'writing')
  return (
    <>
      <header>
        <h2>
          This design <span className="kind">nothing selected</span>
        </h2>
      </header>
      <div className="fields">
        {Object.entries(DESIGN_FIELDS).map(([key, field]) => (
          <FieldRow
            key={key}
            field={field}
            value={key === 'systemV' ? String(settings.systemV) : settings[key as keyof Settings]}
            disabled={disabled}
            onChange={(value) =>
              doEdit(`Change ${field.label.toLowerCase()}`, { do: 'settings', set: stored(key, value) })
            }
          />
        ))}
      </div>
      <Legend />
    </>
  )
}

const stored = (key: string, value: Value): Partial<Settings> => ({
  [key]: key === 'systemV' ? Number(value) : value,
})
