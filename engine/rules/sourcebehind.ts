import { found, type Rule } from './rule'
import { isZero } from './shares'

/** M2: a source or battery that returns through the load-side shunt: what it feeds is taken off the load figure. */
export const sourceBehind: Rule = {
  id: 'M2',
  looksFor: 'chargers, inverter-chargers and batteries behind the load-side shunt',
  check: ({ answers }) =>
    [...answers.shunts.values()].flatMap((shunt) => {
      if (shunt.role !== 'load') return []
      return shunt.shares
        .filter((s) => s.expected === 0 && !isZero(s))
        .map((s) =>
          found(
            'M2',
            'warning',
            'load-side-shunt',
            { parts: [s.part, shunt.part] },
            { part: s.part, shunt: shunt.part, from: s.from, to: s.to, role: s.role },
            { about: s.device },
          ),
        )
    }),
}
