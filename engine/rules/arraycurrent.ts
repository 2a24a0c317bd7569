import { arrayIsc, arraysAt } from './arrays'
import { numberOf } from './ratings'
import { found, type Rule } from './rule'

/** V5: the arrays at a controller can give more short-circuit current than its maker lets it see. */
export const arrayCurrent: Rule = {
  id: 'V5',
  looksFor: 'arrays with more short-circuit current than their controller may see',
  check: (c) =>
    c.design.parts.flatMap((part) => {
      const limit = part.kind === 'solar-controller' ? numberOf(part, 'pvMaxA') : null
      if (limit === null) return []
      const arrays = arraysAt(c, `${part.id}/input`)
      const amps = arrays.reduce((sum, a) => sum + (arrayIsc(a) ?? 0), 0)
      if (amps <= limit * (1 + 1e-9)) return []
      return [
        found(
          'V5',
          'warning',
          'rating',
          { parts: [part.id, ...arrays.map((a) => a.id)] },
          { controller: part.id, arrays: arrays.map((a) => a.id) },
          { actual: { value: amps, unit: 'A' }, limit: { value: limit, unit: 'A' } },
        ),
      ]
    }),
}
