import { keyOf } from '../edit/nets'
import { found, type Rule } from './rule'

/** J5: a mains or data terminal joined to something else. Mains on an extra-low-voltage conductor can kill. */
export const misjoin: Rule = {
  id: 'J5',
  looksFor: 'mains and data terminals joined to anything else',
  check: ({ design, poles }) =>
    design.conductors.flatMap((c) => {
      const [a, b] = [poles.get(keyOf(c.from)), poles.get(keyOf(c.to))]
      if (a === b || a === undefined || b === undefined) return []
      const what = [a, b].includes('mains') ? 'mains' : [a, b].includes('data') ? 'data' : null
      if (what === null) return []
      return [
        found(
          'J5',
          what === 'mains' ? 'danger' : 'warning',
          'method',
          { conductors: [c.id] },
          { conductor: c.id, what },
        ),
      ]
    }),
}
