import { found, type Rule } from './rule'

/** P4: unprotected, but short enough ahead of the first device that the rule set allows it. */
export const nearSource: Rule = {
  id: 'P4',
  looksFor: 'short runs ahead of the first device',
  check: ({ design, answers, ruleSet }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'near-source') return []
      return [
        found(
          'P4',
          'note',
          (c.sheathed ? ruleSet.nearSource.sheathed : ruleSet.nearSource.open).source,
          { conductors: [c.id] },
          { conductor: c.id },
          run.aheadM === null || run.aheadAllowedM === null
            ? {}
            : { actual: { value: run.aheadM, unit: 'm' }, limit: { value: run.aheadAllowedM, unit: 'm' } },
        ),
      ]
    }),
}
