import type { Design } from '../model/design'
import { ruleSetOf } from '../model/rules'
import { RULE_SETS, type RuleSet } from '../tables/rulesets'
import type { Answers, BranchAnswer } from './answers'
import { barsOf } from './bars'
import { dropsOf } from './drops'
import { type Border, networkOf, polesOf } from './network'
import { positionsOf } from './positions'
import { runsOf } from './runs'
import { shuntsOf } from './shunts'
import { type State, solved } from './solved'
import { worse, worstOf } from './worst'

export interface Analysis {
  readonly answers: Answers
  /** The network with every contact closed and unknown devices let go. */
  readonly border: Border
  readonly ruleSet: RuleSet
}

/**
 * Every answer about a design: worst-case currents in all positions of the contacts that matter, protection,
 * ampacity, meters. Pure. O(positions × (parts + conductors)) where the design is mostly a tree.
 */
export function answersOf(design: Design): Analysis {
  const ruleSet = ruleSetOf(design) ?? RULE_SETS[0]!
  const border = networkOf(design, 'any', new Set())
  const states = positionsOf(border).open.map((open): State => {
    const any = solved(open.size === 0 ? border : networkOf(design, 'any', open))
    return { any, none: border.unknownDevices.size === 0 ? any : solved(networkOf(design, 'none', open)) }
  })
  const shunts = shuntsOf(design, states[0]!.any)
  return {
    answers: {
      runs: runsOf({ design, ruleSet, border, states, shunts, poles: polesOf(design) }),
      branches: branchesOf(border, states),
      bars: barsOf(border, states),
      shunts,
      drops: dropsOf(design, ruleSet, states[0]!),
    },
    border,
    ruleSet,
  }
}

function branchesOf(border: Border, states: readonly State[]): Map<string, BranchAnswer> {
  const answers = new Map<string, BranchAnswer>()
  for (const [id, { part, branch }] of border.branches) {
    const worst = worse(worstOf(states, id, 'max'), worstOf(states, id, 'min'))
    answers.set(id, { part, key: branch.key, worst, ratingA: branch.ratingA })
  }
  return answers
}
