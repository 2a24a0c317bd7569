import { found, type Rule } from './rule'
import { isRange } from './shares'

/** M5: what the shunt shows depends on which battery happens to supply: batteries stand on both sides of it. */
export const misplacedShunt: Rule = {
  id: 'M5',
  looksFor: 'shunts whose reading depends on which battery supplies',
  check: ({ answers }) =>
    [...answers.shunts.values()].flatMap((shunt) => {
      const unsure = shunt.shares.filter((s) => s.role !== 'battery' && isRange(s))
      if (unsure.length === 0 && shunt.betweenBatteries < 1e-6) return []
      const parts = [...new Set(unsure.map((s) => s.part))]
      return [
        found(
          'M5',
          'warning',
          'battery-shunt',
          { parts: [shunt.part] },
          { shunt: shunt.part, role: shunt.role, devices: parts },
        ),
      ]
    }),
}
