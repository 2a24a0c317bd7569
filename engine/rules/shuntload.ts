import { leastKnown } from '../calc/answer'
import { found, type Rule } from './rule'

/** Continuous use of a shunt: two thirds of its rated current (maker guidance restating ANSI C39.1). */
const CONTINUOUS = 2 / 3

/** M7: a shunt may carry more than it can bear for long; beyond its rating it also reads wrong. */
export const shuntLoad: Rule = {
  id: 'M7',
  looksFor: 'shunts loaded beyond two thirds of their rating for long, or beyond it at all',
  check: ({ answers, border }) =>
    [...answers.branches].flatMap(([id, answer]) => {
      if (border.branches.get(id)?.branch.kind !== 'shunt') return []
      const amps = leastKnown(answer.worst)
      if (amps === null || answer.ratingA === null) return []
      const limit = answer.ratingA * CONTINUOUS
      if (amps === 'unlimited' || amps <= limit * (1 + 1e-9)) return []
      return [
        found(
          'M7',
          amps > answer.ratingA ? 'danger' : 'note',
          'shunt-continuous',
          { parts: [answer.part] },
          { part: answer.part, rating: answer.ratingA },
          { actual: { value: amps, unit: 'A' }, limit: { value: limit, unit: 'A' }, about: answer.key },
        ),
      ]
    }),
}
