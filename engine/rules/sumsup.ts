import { found, type Rule } from './rule'

/** P3: each guard alone is within what the conductor may have, their sum at one end is not. */
export const sumsUp: Rule = {
  id: 'P3',
  looksFor: 'protective devices and sources that add up beyond the conductor',
  check: ({ design, answers, ruleSet }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'sources-add-up') return []
      if (!run.cause || !('value' in run.ampacity)) return []
      const guards = [...new Set(run.cause.guards.map((g) => g.part))]
      return [
        found(
          'P3',
          'warning',
          ruleSet.deviceShare.source,
          { conductors: [c.id], parts: guards },
          { conductor: c.id, guards, ampacity: run.ampacity.value.amps },
          {
            actual: { value: run.cause.amps, unit: 'A' },
            limit: { value: run.ampacity.value.amps * ruleSet.deviceShare.value, unit: 'A' },
          },
        ),
      ]
    }),
}
