import { leastKnown } from '../calc/answer'
import { ratingOf } from './ratings'
import { found, type Rule } from './rule'

/** B1: more may pass through a bar than it is rated for. */
export const barLoad: Rule = {
  id: 'B1',
  looksFor: 'bars beyond their rating',
  check: ({ design, answers }) =>
    [...answers.bars].flatMap(([part, worst]) => {
      const rating = ratingOf(design, part)
      const amps = leastKnown(worst)
      if (amps === null || rating === null) return []
      if (amps === 'unlimited' || amps <= rating * (1 + 1e-9)) return []
      return [
        found(
          'B1',
          'danger',
          'rating',
          { parts: [part] },
          { part },
          { actual: { value: amps, unit: 'A' }, limit: { value: rating, unit: 'A' } },
        ),
      ]
    }),
}
