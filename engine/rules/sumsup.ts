import { endsOf } from './guards'
import { found, type Rule } from './rule'

/** P3: each guard alone is within what the conductor may have, their sum at one end is not. */
export const sumsUp: Rule = {
  id: 'P3',
  looksFor: 'protective devices and sources that add up beyond the conductor',
  check: ({ design, answers, ruleSet }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'sources-add-up') return []
      if (!('value' in run.ampacity)) return []
      const end = endsOf(run).reduce((most, e) =>
        e.amps === 'unlimited' || (most.amps !== 'unlimited' && e.amps > most.amps) ? e : most,
      )
      const guards = [...new Set(end.guards.map((g) => g.part))]
      return [
        found(
          'P3',
          'warning',
          'rule-set',
          { conductors: [c.id], parts: guards },
          { conductor: c.id, guards, ampacity: run.ampacity.value.amps },
          {
            actual: { value: end.amps, unit: 'A' },
            limit: { value: run.ampacity.value.amps * ruleSet.deviceShare.value, unit: 'A' },
          },
        ),
      ]
    }),
}
