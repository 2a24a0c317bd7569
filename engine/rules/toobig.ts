import { found, type Rule } from './rule'

/** P2: a device (or a source that limits itself) lets through more than the rule set allows for the conductor. */
export const tooBig: Rule = {
  id: 'P2',
  looksFor: 'protective devices too big for the conductor behind them',
  check: ({ design, answers, ruleSet }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'device-too-big') return []
      const guard = run.cause?.guards[0]
      if (!guard || !('value' in run.ampacity)) return []
      const allowed = run.ampacity.value.amps * ruleSet.deviceShare.value
      return [
        found(
          'P2',
          'danger',
          ruleSet.deviceShare.source,
          { conductors: [c.id], parts: [guard.part] },
          {
            conductor: c.id,
            guard: guard.part,
            key: guard.key,
            is: guard.is,
            ampacity: run.ampacity.value.amps,
          },
          { actual: { value: guard.amps, unit: 'A' }, limit: { value: allowed, unit: 'A' } },
        ),
      ]
    }),
}
