import type { ConductorId, PartId } from '../model/design'
import { found, type Rule } from './rule'

interface Sum {
  readonly guards: readonly PartId[]
  readonly amps: number | 'unlimited'
  readonly conductors: readonly ConductorId[]
  readonly ampacityA: number
}

/**
 * P3: each guard alone is within what the conductor may have, their sum at one end is not. One finding for the same
 * guards, the conductor that may have least first.
 */
export const sumsUp: Rule = {
  id: 'P3',
  looksFor: 'protective devices and sources that add up beyond the conductor',
  check: ({ design, answers, ruleSet }) => {
    const sums = new Map<string, Sum>()
    for (const { id } of design.conductors) {
      const run = answers.runs.get(id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'sources-add-up') continue
      if (!run.cause || !('value' in run.ampacity)) continue
      const guards = [...new Set(run.cause.guards.map((g) => g.part))]
      const at = [run.cause.amps, ...run.cause.guards.map((g) => `${g.part}/${g.key}`).sort()].join(' ')
      const before = sums.get(at)
      const ampacityA = run.ampacity.value.amps
      const worse = !before || ampacityA < before.ampacityA
      sums.set(at, {
        guards,
        amps: run.cause.amps,
        conductors: worse ? [id, ...(before?.conductors ?? [])] : [...before.conductors, id],
        ampacityA: worse ? ampacityA : before.ampacityA,
      })
    }
    return [...sums.values()].map(({ guards, amps, conductors, ampacityA }) =>
      found(
        'P3',
        'warning',
        ruleSet.deviceShare.source,
        { conductors, parts: guards },
        { conductor: conductors[0]!, behind: conductors.slice(1), guards, ampacity: ampacityA },
        {
          actual: { value: amps, unit: 'A' },
          limit: { value: ampacityA * ruleSet.deviceShare.value, unit: 'A' },
        },
      ),
    )
  },
}
