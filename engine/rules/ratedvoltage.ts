import { valuesOf } from '../calc/fusefacts'
import { nominalVolts } from './nominal'
import { isKnown } from './polarity'
import { found, type Rule } from './rule'
import { unfedParts } from './unfedparts'

/** Apart by more than this share of its rated voltage, a load works wrongly or burns. Common practice, no source. */
const APART = 0.25

/** What a load, or the input of a charger from the alternator, is made for, V; null: not stated. */
function ratedOf(of: ReturnType<typeof valuesOf>, device: string): number | null {
  const volts = of('ratedV') ?? (device === 'input' ? of('inputV') : null)
  return volts == null || volts === '' ? null : Number(volts)
}

/**
 * R3: a load, or a charger's input, rated for another voltage than its circuit has: behind a converter, or straight on a
 * higher system. Not checked where nothing tells what voltage its circuit has.
 */
export const ratedVoltage: Rule = {
  id: 'R3',
  looksFor: 'loads rated for another voltage than that of their circuit',
  check: (c) => {
    const voltsOf = nominalVolts(c)
    return [...c.border.devices].flatMap(([id, { part, device, role }]) => {
      const rated = role === 'load' ? ratedOf(valuesOf(c.design, part), device.key) : null
      const volts = voltsOf(id)
      if (rated === null || rated <= 0) return []
      if (volts === null)
        return unfedParts(c).has(part) || !isKnown(c, id)
          ? []
          : [
              found(
                'R3',
                'not-checked',
                'method',
                { parts: [part] },
                { part },
                { limit: { value: rated, unit: 'V' } },
              ),
            ]
      if (volts <= 0 || Math.abs(volts - rated) <= APART * rated) return []
      return [
        found(
          'R3',
          volts > rated ? 'danger' : 'warning',
          'rating',
          { parts: [part] },
          { part },
          { actual: { value: volts, unit: 'V' }, limit: { value: rated, unit: 'V' } },
        ),
      ]
    })
  },
}
