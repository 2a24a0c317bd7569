import { nominalVolts } from './nominal'
import { found, type Rule } from './rule'

/**
 * Charge voltage over the nominal one of the bank: 14.4 V to 14.6 V for 12 V, up to 15.8 V where lead-acid is equalised; below
 * the nominal voltage nothing is charged. Common practice, no source.
 */
const LEAST = 1
const MOST = 1.35

/** R7: a charger is set for another voltage than the batteries at it have: it cooks them, or does not charge them. */
export const chargeVoltage: Rule = {
  id: 'R7',
  looksFor: 'chargers set for another voltage than their batteries have',
  check: (c) => {
    const voltsOf = nominalVolts(c)
    return [...c.border.devices].flatMap(([id, { part, device }]) => {
      const charge = device.charging?.absorptionV
      const nominal = charge == null ? null : voltsOf(id)
      if (charge == null || nominal === null || nominal <= 0) return []
      if (charge >= LEAST * nominal && charge <= MOST * nominal * (1 + 1e-9)) return []
      return [
        found(
          'R7',
          charge > nominal ? 'danger' : 'warning',
          'common-practice',
          { parts: [part] },
          { part },
          { actual: { value: charge, unit: 'V' }, limit: { value: nominal, unit: 'V' } },
        ),
      ]
    })
  },
}
