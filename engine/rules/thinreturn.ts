import { found, type Rule } from './rule'

/**
 * P5: a return can be made to carry, for as long as no fuse blows, more than it may. Where it has no limit at all,
 * some feed has no protection: that feed is the cause and is found by P1, so the returns behind it are not listed too.
 */
export const thinReturn: Rule = {
  id: 'P5',
  looksFor: 'returns thinner than what the fuses on the positive side let through',
  check: ({ design, answers, ruleSet }) => {
    const bareFeed = [...answers.runs.values()].some(
      (run) => 'value' in run.verdict && run.verdict.value === 'unprotected',
    )
    return design.conductors.flatMap((c) => {
      const run = answers.runs.get(c.id)
      if (!run?.sustained || !('value' in run.sustained) || !('value' in run.ampacity)) return []
      const limit = run.ampacity.value.amps * ruleSet.deviceShare.value
      const { amps, guards } = run.sustained.value
      if (amps === 'unlimited' && bareFeed) return []
      if (amps !== 'unlimited' && amps <= limit * (1 + 1e-9)) return []
      return [
        found(
          'P5',
          'danger',
          'rule-set',
          { conductors: [c.id] },
          { conductor: c.id, ampacity: run.ampacity.value.amps, guards: guards.map((g) => g.part) },
          { actual: { value: amps, unit: 'A' }, limit: { value: limit, unit: 'A' } },
        ),
      ]
    })
  },
}
