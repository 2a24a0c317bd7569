import { bondsOf } from '../calc/bonds'
import { sizeIn } from '../model/sizes'
import { found, type Rule } from './rule'

/**
 * J10: the bond between the frame and a battery's negative is thinner than the battery's own lead. A feed that chafes
 * through on the bodywork comes back through the bond, limited by the feed's devices alone: no check of returns sees it.
 */
export const frameBond: Rule = {
  id: 'J10',
  looksFor: "bonds to the frame that are thinner than the battery's own lead",
  check: ({ border, design }) =>
    bondsOf(design, border).flatMap(({ bond, lead, leastMm2 }) => {
      const mm2 = sizeIn(design, bond.size)?.sectionMm2
      if (mm2 === undefined || mm2 >= leastMm2 * (1 - 1e-9)) return []
      return [
        found(
          'J10',
          'warning',
          'nfpa-552',
          { conductors: [bond.id, lead.id] },
          { bond: bond.id, lead: lead.id },
          { actual: { value: mm2, unit: 'mm²' }, limit: { value: leastMm2, unit: 'mm²' } },
        ),
      ]
    }),
}
