import { ruleSetOf } from '../model/rules'
import { found, type Rule } from './rule'

/** X2: the design names a rule set that this version does not know; every check is made against another. */
export const ruleSetUnknown: Rule = {
  id: 'X2',
  looksFor: 'a rule set that is not known here',
  check: ({ design, ruleSet }) =>
    ruleSetOf(design)
      ? []
      : [found('X2', 'not-checked', 'method', {}, { named: design.settings.ruleSet, used: ruleSet.title })],
}
