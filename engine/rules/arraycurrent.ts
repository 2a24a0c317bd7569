import type { Part } from '../model/design'
import { arrayIsc, arrayWays } from './arrays'
import { numberOf } from './ratings'
import { found, type Rule } from './rule'

/**
 * V5: the arrays at a controller can give more short-circuit current than its maker lets it see. Of arrays in series counts
 * the lesser of what the lowest and what the highest of them give: no less than the truth.
 */
export const arrayCurrent: Rule = {
  id: 'V5',
  looksFor: 'arrays with more short-circuit current than their controller may see',
  check: (c) =>
    c.design.parts.flatMap((part) => {
      const limit = part.kind === 'solar-controller' ? numberOf(part, 'pvMaxA') : null
      if (limit === null) return []
      const ways = arrayWays(c, `${part.id}/input`)
      const arrays = [...new Set(ways.flat())]
      const amps = Math.min(currentOf(ways.map((way) => way[0]!)), currentOf(ways.map((way) => way.at(-1)!)))
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

/** Sum of the short-circuit currents, each array once, A. */
const currentOf = (arrays: readonly Part[]): number =>
  [...new Set(arrays)].reduce((sum, a) => sum + (arrayIsc(a) ?? 0), 0)
