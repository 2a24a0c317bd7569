import type { ConductorId, Design } from '../model/design'
import type { Answers, BranchAnswer, RunAnswer } from './answers'
import { bareCauses } from './barecauses'
import { barsOf } from './bars'
import { dropsOf } from './drops'
import { faultsOf } from './faults'
import { type Border, polesOf } from './network'
import { runsOf } from './runs'
import { shuntsOf } from './shunts'
import type { State } from './solved'
import { startsOf } from './starts'
import { type States, statesOf } from './states'
import { worse, worstOf } from './worst'

export interface Analysis extends States {
  readonly answers: Answers
}

/**
 * Every answer about a design: worst-case currents in all positions of the contacts that matter, protection,
 * ampacity, meters. Pure. O(positions × (parts + conductors)) where the design is mostly a tree.
 */
export function answersOf(design: Design): Analysis {
  const { border, p, states, ruleSet } = statesOf(design)
  const shunts = shuntsOf(design, states)
  const branches = branchesOf(border, states)
  return {
    answers: {
      runs: withCauses(runsOf({ design, ruleSet, border, states, shunts, poles: polesOf(design) }), states),
      branches,
      bars: barsOf(border, states),
      shunts,
      drops: dropsOf(design, ruleSet, states),
      faults: { ...faultsOf(design, states), starts: startsOf(design, states[0]!.any, branches) },
    },
    border,
    p,
    states,
    ruleSet,
  }
}

/** The same with the bare feeds that are the cause where a return has no limit. */
function withCauses(
  runs: Map<ConductorId, RunAnswer>,
  states: readonly State[],
): Map<ConductorId, RunAnswer> {
  for (const [id, bare] of bareCauses(runs, states)) {
    const run = runs.get(id)!
    if (run.sustained && 'value' in run.sustained)
      runs.set(id, { ...run, sustained: { value: { ...run.sustained.value, bare } } })
  }
  return runs
}

export function branchesOf(border: Border, states: readonly State[]): Map<string, BranchAnswer> {
  const answers = new Map<string, BranchAnswer>()
  for (const [id, { part, branch }] of border.branches) {
    const worst = worse(worstOf(states, id, 'max'), worstOf(states, id, 'min'))
    answers.set(id, { part, key: branch.key, worst, ratingA: branch.ratingA })
  }
  return answers
}
