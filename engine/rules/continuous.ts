import { continuousCurrents } from '../calc/continuous'
import { fuseFacts } from '../calc/fusefacts'
import { found, type Rule } from './rule'

/** F3: what runs for hours is more than the share of its rating that a device carries for ever. */
export const continuous: Rule = {
  id: 'F3',
  looksFor: 'fuses and breakers loaded for hours beyond the share of their rating that they bear for ever',
  check: (c) => {
    const share = c.ruleSet.continuousShare
    const currents = continuousCurrents(c.design, c.states)
    return [...fuseFacts(c.design, c.border)].flatMap(([id, of]) => {
      const amps = currents.get(id) ?? 0
      if (of.ratingA === null || of.fullDuty || !Number.isFinite(amps)) return []
      const limit = share.value * of.ratingA
      if (amps <= limit * (1 + 1e-9) || amps > of.ratingA * (1 + 1e-9)) return []
      return [
        found(
          'F3',
          share.confirmed ? 'warning' : 'note',
          share.source,
          { parts: [of.part] },
          { part: of.part, way: of.name, rating: of.ratingA, percent: share.value * 100 },
          { about: of.key, actual: { value: amps, unit: 'A' }, limit: { value: limit, unit: 'A' } },
        ),
      ]
    })
  },
}
