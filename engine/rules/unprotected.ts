import { found, type Rule } from './rule'

/** P1: an unlimited source reaches an end of a feed through no protective device. */
export const unprotected: Rule = {
  id: 'P1',
  looksFor: 'conductors that a source reaches through no protective device',
  check: ({ design, answers, ruleSet }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run?.cause || !('value' in run.verdict) || run.verdict.value !== 'unprotected') return []
      const { source, way } = run.cause
      return [
        found(
          'P1',
          'danger',
          (c.sheathed ? ruleSet.nearSource.sheathed : ruleSet.nearSource.open).source,
          { conductors: [c.id], parts: source === null ? [] : [source] },
          {
            conductor: c.id,
            source: source ?? '',
            way,
            ...(run.aheadM === null ? {} : { aheadM: run.aheadM }),
            ...(run.aheadAllowedM === null ? {} : { allowedM: run.aheadAllowedM }),
          },
          { actual: { value: 'unlimited', unit: 'A' } },
        ),
      ]
    }),
}
