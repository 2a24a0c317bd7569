import { sizeIn } from '../model/sizes'
import { found, type Rule } from './rule'

/** C3: a conductor thinner than the rule set lets any be, whatever it carries. */
export const leastSize: Rule = {
  id: 'C3',
  looksFor: 'conductors thinner than the least size of the rule set',
  check: ({ border, design, ruleSet }) =>
    [...border.conductors.values()].flatMap((c) => {
      const mm2 = sizeIn(design, c.size)?.sectionMm2
      const least = c.sheathed ? ruleSet.leastMm2.sheathed : ruleSet.leastMm2.open
      if (mm2 === undefined || mm2 >= least.value * (1 - 1e-9)) return []
      return [
        found(
          'C3',
          'warning',
          least.source,
          { conductors: [c.id] },
          { conductor: c.id, sheathed: c.sheathed },
          { actual: { value: mm2, unit: 'mm²' }, limit: { value: least.value, unit: 'mm²' } },
        ),
      ]
    }),
}
