import { found, type Rule } from './rule'
import { isDeaf } from './shares'

/** M8: nothing that the shunt should measure passes it: it is not joined, or stands in no way of the current. */
export const deafShunt: Rule = {
  id: 'M8',
  looksFor: 'shunts that measure nothing',
  check: ({ answers }) =>
    [...answers.shunts.values()]
      .filter(isDeaf)
      .map((s) =>
        found(
          'M8',
          'warning',
          s.role === 'load' ? 'load-side-shunt' : 'battery-shunt',
          { parts: [s.part] },
          { shunt: s.part, role: s.role },
        ),
      ),
}
