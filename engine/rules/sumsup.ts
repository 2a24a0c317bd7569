import type { Answers } from '../calc/answers'
import type { ConductorId, PartId } from '../model/design'
import { found, type Rule } from './rule'

interface Sum {
  readonly guards: readonly PartId[]
  readonly amps: number | 'unlimited'
  readonly conductors: readonly ConductorId[]
  readonly ampacityA: number
  /** It runs ahead of them, and they let so much through it; else they feed a short on it. */
  readonly ahead: boolean
}

/**
 * P3: each guard alone is within what the conductor may have, their sum is not: what comes in at one end, or, ahead of the
 * first devices, what these let through. One finding for the same
 * guards, the conductor that may have least first.
 */
export const sumsUp: Rule = {
  id: 'P3',
  looksFor: 'protective devices and sources that add up beyond the conductor',
  check: ({ design, answers, ruleSet }) => {
    const sums = new Map<string, Sum>()
    const bareWays = waysToBare(answers)
    for (const { id } of design.conductors) {
      const run = answers.runs.get(id)
      if (!run || !('value' in run.verdict) || run.verdict.value !== 'sources-add-up') continue
      if (!run.cause || !('value' in run.ampacity)) continue
      const guards = [...new Set(run.cause.guards.map((g) => g.part))]
      const ahead = [run.from, run.to].some((end) => 'value' in end && end.value.amps === 'unlimited')
      if (ahead && bareWays.has(id)) continue
      const at = [ahead, run.cause.amps, ...run.cause.guards.map((g) => `${g.part}/${g.key}`).sort()].join(
        ' ',
      )
      const before = sums.get(at)
      const ampacityA = run.ampacity.value.amps
      const worse = !before || ampacityA < before.ampacityA
      sums.set(at, {
        guards,
        amps: run.cause.amps,
        conductors: worse ? [id, ...(before?.conductors ?? [])] : [...before.conductors, id],
        ampacityA: worse ? ampacityA : before.ampacityA,
        ahead,
      })
    }
    return [...sums.values()].map(({ guards, amps, conductors, ampacityA, ahead }) =>
      found(
        'P3',
        'warning',
        ruleSet.deviceShare.source,
        { conductors, parts: guards },
        { conductor: conductors[0]!, behind: conductors.slice(1), guards, ampacity: ampacityA, ahead },
        {
          actual: { value: amps, unit: 'A' },
          limit: { value: ampacityA * ruleSet.deviceShare.value, unit: 'A' },
        },
      ),
    )
  },
}

/** Conductors on the way from a source to one without protection: P1 tells of the device that is missing behind them. */
const waysToBare = ({ runs }: Answers): Set<ConductorId> =>
  new Set(
    [...runs.values()].flatMap(({ verdict, cause }) =>
      'value' in verdict && verdict.value === 'unprotected' ? (cause?.way ?? []) : [],
    ),
  )
