import type { Design } from '../model/design'
import { ruleSetOf } from '../model/rules'
import { RULE_SETS, type RuleSet } from '../tables/rulesets'
import type { Answers, BranchAnswer } from './answers'
import { barsOf } from './bars'
import { dropsOf } from './drops'
import { faultsOf } from './faults'
import { type Border, networkOf, type OpenContacts, polesOf } from './network'
import { positionsOf } from './positions'
import { type Prepared, prepare } from './prepare'
import { runsOf } from './runs'
import { shuntsOf } from './shunts'
import { type State, solved } from './solved'
import { worse, worstOf } from './worst'

export interface Analysis {
  readonly answers: Answers
  /** The network with every contact closed and unknown devices let go; the same prepared. */
  readonly border: Border
  readonly p: Prepared
  readonly states: readonly State[]
  readonly ruleSet: RuleSet
}

/**
 * Every answer about a design: worst-case currents in all positions of the contacts that matter, protection,
 * ampacity, meters. Pure. O(positions × (parts + conductors)) where the design is mostly a tree.
 */
export function answersOf(design: Design): Analysis {
  const ruleSet = ruleSetOf(design) ?? RULE_SETS[0]!
  const border = networkOf(design, 'any', new Set())
  const p = prepare(border.form)
  const laid = (open: OpenContacts): Border => (open.size === 0 ? border : networkOf(design, 'any', open))
  const preparedAs = (b: Border): Prepared => (b === border ? p : prepare(b.form))
  const { open, untried } = positionsOf(border, (contacts) => preparedAs(laid(contacts)))
  const states = open.map((contacts): State => {
    const free = laid(contacts)
    const any = solved(free, preparedAs(free))
    if (border.unknownDevices.size === 0) return { any, none: any, untried }
    const without = networkOf(design, 'none', contacts)
    return { any, none: solved(without, prepare(without.form)), untried }
  })
  const shunts = shuntsOf(design, states)
  return {
    answers: {
      runs: runsOf({ design, ruleSet, border, states, shunts, poles: polesOf(design) }),
      branches: branchesOf(border, states),
      bars: barsOf(border, states),
      shunts,
      drops: dropsOf(design, ruleSet, states[0]!),
      faults: faultsOf(design, states),
    },
    border,
    p,
    states,
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
