import { found, type Rule } from './rule'
import { isDeaf, isZero, measuredElsewhere } from './shares'

/** M6: a load or source whose current the battery shunt never sees: charge and draw come out wrong. */
export const missedByBattery: Rule = {
  id: 'M6',
  looksFor: 'loads and sources that bypass the battery shunt',
  check: ({ answers }) =>
    [...answers.shunts.values()].flatMap((shunt) => {
      if (shunt.role !== 'battery' || isDeaf(shunt)) return []
      return shunt.shares
        .filter((s) => s.role !== 'battery' && isZero(s) && !measuredElsewhere(answers.shunts, shunt, s))
        .map((s) =>
          found(
            'M6',
            'warning',
            'battery-shunt',
            { parts: [s.part, shunt.part] },
            { part: s.part, shunt: shunt.part },
            { about: s.device },
          ),
        )
    }),
}
