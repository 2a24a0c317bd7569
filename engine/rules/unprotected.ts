import { found, type Rule } from './rule'

/** P1: an unlimited source reaches an end of a feed through no protective device. */
export const unprotected: Rule = {
  id: 'P1',
  looksFor: 'conductors that a source reaches through no protective device',
  check: ({ design, answers }) =>
    design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'unprotected') return []
      const ends = (['from', 'to'] as const).filter((end) => {
        const answer = run[end]
        return 'value' in answer && answer.value.amps === 'unlimited'
      })
      const first = run[ends[0] ?? 'from']
      const source = 'value' in first ? first.value.source : null
      return [
        found(
          'P1',
          'danger',
          'rule-set',
          { conductors: [c.id], parts: source === null ? [] : [source] },
          { conductor: c.id, source: source ?? '', ends, way: 'value' in first ? first.value.way : [] },
          { actual: { value: 'unlimited', unit: 'A' } },
        ),
      ]
    }),
}
