import { OWN_RULES, ownRuleSet } from '../tables/ownrules'
import { type RuleSet, ruleSetByKey } from '../tables/rulesets'
import type { Settings } from './design'

/** The rule set of a design, built in or its own; undefined where this version does not know it. */
export function ruleSetOf({ ruleSet, ownRules }: Settings): RuleSet | undefined {
  if (ruleSet !== OWN_RULES) return ruleSetByKey(ruleSet)
  return ownRules && ownRuleSet(ownRules)
}
