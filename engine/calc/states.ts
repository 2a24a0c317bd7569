import type { Design } from '../model/design'
import { ruleSetOf } from '../model/rules'
import { RULE_SETS, type RuleSet } from '../tables/rulesets'
import { type Border, networkOf, type OpenContacts } from './network'
import { positionsOf } from './positions'
import { type Prepared, prepare } from './prepare'
import { type State, solved } from './solved'

/** A design laid out and solved in every position of its contacts that matters. */
export interface States {
  /** The network with every contact closed and unknown devices let go; the same prepared. */
  readonly border: Border
  readonly p: Prepared
  readonly states: readonly State[]
  readonly ruleSet: RuleSet
}

export function statesOf(design: Design): States {
  const ruleSet = ruleSetOf(design) ?? RULE_SETS[0]!
  const border = networkOf(design, 'any', new Set())
  const p = prepare(border.form)
  const laid = (open: OpenContacts): Border => (open.size === 0 ? border : networkOf(design, 'any', open))
  const preparedAs = (b: Border): Prepared => (b === border ? p : prepare(b.form))
  const { positions, untried } = positionsOf(border, (contacts) => preparedAs(laid(contacts)))
  const states: State[] = []
  for (const { open, opened } of positions) {
    const free = laid(open)
    const any = solved(free, preparedAs(free))
    const from = opened && { from: states[opened.from]!.any, block: opened.block }
    if (border.unknownDevices.size === 0) states.push({ any, none: any, opened: from, untried })
    else {
      const without = networkOf(design, 'none', open)
      states.push({ any, none: solved(without, prepare(without.form)), opened: from, untried })
    }
  }
  return { border, p, states, ruleSet }
}
