import { kindOf } from '../kinds/all'
import type { Part } from '../model/design'
import { partById } from '../model/lookup'
import { complete } from '../model/values'
import type { Volts } from '../units'
import { nominalVolts } from './nominal'
import { found, type Rule } from './rule'

/** Apart by more than this share of the system voltage, and the current from a power is wrong by as much. */
const APART = 0.2

/** D5: the power of a device is turned into current at the system voltage, but its circuit has another. */
export const otherVoltage: Rule = {
  id: 'D5',
  looksFor: 'powers counted at the system voltage in circuits of another',
  check: (c) => {
    const { systemV } = c.design.settings
    const voltsOf = nominalVolts(c)
    return [...c.border.devices].flatMap(([id, ref]) => {
      const part = partById(c.design, ref.part)
      const field = part && countedAtSystem(part)
      if (!field) return []
      const volts = voltsOf(id)
      if (volts === null || volts <= 0 || Math.abs(volts - systemV) <= APART * systemV) return []
      const fix =
        field === 'ratedV'
          ? {
              title: `Count ${part.designation} at ${volts} V`,
              edit: { do: 'value', part: part.id, field, value: volts } as const,
            }
          : undefined
      return [
        found(
          'D5',
          'warning',
          'method',
          { parts: [part.id] },
          { part: part.id, system: systemV, volts, field },
          {
            actual: { value: systemV satisfies Volts, unit: 'V' },
            limit: { value: volts, unit: 'V' },
            ...(fix ? { fix } : {}),
          },
        ),
      ]
    })
  },
}

/** The empty field for which the system voltage stands in; null where none does. */
function countedAtSystem(part: Part): 'ratedV' | 'lowestV' | null {
  const kind = kindOf(part.kind)
  if (!kind?.fields.powerW) return null
  const values = complete(kind.fields, part.values)
  if (values.powerW === null) return null
  if (kind.fields.ratedV) return values.ratedV === null && values.currentA === null ? 'ratedV' : null
  return kind.fields.lowestV && values.lowestV === null ? 'lowestV' : null
}
