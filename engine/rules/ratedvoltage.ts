import { valuesOf } from '../calc/fusefacts'
import { nominalVolts } from './nominal'
import { isKnown } from './polarity'
import { found, type Rule } from './rule'
import { unfedParts } from './unfedparts'

/** Apart by more than this share of its rated voltage, a load works wrongly or burns. Common practice, no source. */
const APART = 0.25

/**
 * R3: a load rated for another voltage than its circuit has: behind a converter, or straight on a higher system. Not checked
 * where nothing tells what voltage its circuit has.
 */
export const ratedVoltage: Rule = {
  id: 'R3',
  looksFor: 'loads rated for another voltage than that of their circuit',
  check: (c) => {
    const voltsOf = nominalVolts(c)
    return [...c.border.devices].flatMap(([id, { part, role }]) => {
      const rated = role === 'load' ? valuesOf(c.design, part)('ratedV') : null
      const volts = voltsOf(id)
      if (typeof rated !== 'number' || rated <= 0) return []
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
