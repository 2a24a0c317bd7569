import { leastKnown } from '../calc/answer'
import { found, type Rule } from './rule'

/** S1: a relay, switch or isolator contact may carry more than its rating: it overheats or welds. */
export const contactLoad: Rule = {
  id: 'S1',
  looksFor: 'contacts of relays, switches and isolators beyond their rating',
  check: ({ answers, border }) =>
    [...answers.branches].flatMap(([id, answer]) => {
      if (border.branches.get(id)?.branch.kind !== 'contact') return []
      const amps = leastKnown(answer.worst)
      if (amps === null || answer.ratingA === null) return []
      if (amps === 'unlimited' || amps <= answer.ratingA * (1 + 1e-9)) return []
      return [
        found(
          'S1',
          'danger',
          'rating',
          { parts: [answer.part] },
          { part: answer.part, contact: border.branches.get(id)?.branch.name ?? '' },
          {
            actual: { value: amps, unit: 'A' },
            limit: { value: answer.ratingA, unit: 'A' },
            about: answer.key,
          },
        ),
      ]
    }),
}
