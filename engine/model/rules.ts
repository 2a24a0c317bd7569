import { OWN_RULES, ownRuleSet } from '../tables/ownrules'
import { type RuleSet, ruleSetByKey } from '../tables/rulesets'
import type { Design } from './design'

/** The rule set of a design, built in or its own; undefined where this version does not know it. */
export function ruleSetOf({ settings, ownRules }: Design): RuleSet | undefined {
  if (settings.ruleSet !== OWN_RULES) return ruleSetByKey(settings.ruleSet)
  return ownRules && ownRuleSet(ownRules)
}
