import { coldVoltage } from '../calc/coldvoltage'
import { nominalVolts } from './nominal'
import { found, type Rule } from './rule'

/**
 * V6: an array stands straight across a battery, or across what holds a voltage, with no controller between: nothing ends
 * the charge, and with the battery off the open voltage of the array stands on everything there.
 */
export const bareArray: Rule = {
  id: 'V6',
  looksFor: 'PV arrays straight on a battery, with no controller between',
  check: (c) => {
    const arrays = c.design.parts.filter((part) => part.kind === 'pv-array')
    if (arrays.length === 0) return []
    const voltsOf = nominalVolts(c)
    return arrays.flatMap((part) => {
      const held = voltsOf(`${part.id}/array`)
      if (held === null || held === 0) return []
      const { coldestC } = c.design.settings
      const open = coldVoltage(part, coldestC)
      return [
        found(
          'V6',
          'danger',
          'method',
          { parts: [part.id] },
          { array: part.id, coldest: coldestC },
          {
            ...(open === null ? {} : { actual: { value: open, unit: 'V' } as const }),
            limit: { value: Math.abs(held), unit: 'V' },
          },
        ),
      ]
    })
  },
}
