import { leastKnown } from '../calc/answer'
import { found, type Rule } from './rule'

/** F1: a fuse or breaker may have to carry more than its rating in ordinary use, and will open. */
export const fuseLoad: Rule = {
  id: 'F1',
  looksFor: 'fuses and breakers rated below what they must carry',
  check: ({ answers, border }) =>
    [...answers.branches].flatMap(([id, answer]) => {
      if (border.branches.get(id)?.branch.kind !== 'fuse') return []
      const amps = leastKnown(answer.worst)
      if (amps === null || answer.ratingA === null) return []
      if (amps === 'unlimited' || amps <= answer.ratingA * (1 + 1e-9)) return []
      return [
        found(
          'F1',
          'warning',
          'rating',
          { parts: [answer.part] },
          { part: answer.part, way: border.branches.get(id)?.branch.name ?? '' },
          {
            actual: { value: amps, unit: 'A' },
            limit: { value: answer.ratingA, unit: 'A' },
            about: answer.key,
          },
        ),
      ]
    }),
}
