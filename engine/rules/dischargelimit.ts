import { beyondSupply } from '../calc/beyondsupply'
import { found, type Rule } from './rule'

/**
 * R6: loads ask for more than batteries and converters give them for long. Every worst case counts on those limits, and a
 * battery that gives more than its own heats what was chosen for it. One load alone is a warning; all that are joined
 * together a note, since they seldom run at once.
 */
export const dischargeLimit: Rule = {
  id: 'R6',
  looksFor: 'loads that ask for more than batteries and converters may give',
  check: ({ border, states }) =>
    beyondSupply(border, states).map(({ alone, loads, asksA, givesA, supplies }) =>
      found(
        'R6',
        alone === null ? 'note' : 'warning',
        'rating',
        { parts: alone === null ? supplies : [alone, ...supplies] },
        { loads, alone: alone !== null, supplies },
        {
          actual: { value: asksA, unit: 'A' },
          limit: { value: givesA, unit: 'A' },
        },
      ),
    ),
}
