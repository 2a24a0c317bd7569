import type { Design } from '../model/design'
import { OWN_BOUNDS, OWN_RULES, type OwnRules } from '../tables/ownrules'
import { ruleSetByKey } from '../tables/rulesets'
import { done } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Sets the designer's own rules, or takes them away. Choosing them for the checks is a setting. */
export function applyRules(design: Design, { own }: EditOf<'rules'>): EditResult {
  if (own === null) {
    if (design.settings.ruleSet === OWN_RULES)
      return refuse(
        'own-rules',
        'The checks of this design use its own rules; choose another rule set first.',
      )
    const { ownRules, ...without } = design
    return done(ownRules === undefined ? design : without)
  }
  return ownRulesFault(own) ?? done({ ...design, ownRules: own })
}

function ownRulesFault(own: OwnRules): Refusal | null {
  if (own.title.trim() === '')
    return refuse('own-rules', 'Rules of your own need a title; it is printed with every result.')
  if (!ruleSetByKey(own.basedOn))
    return refuse('own-rules', 'Rules of your own are based on one of the built-in rule sets.')
  for (const [key, [least, most]] of Object.entries(OWN_BOUNDS)) {
    const value = own[key as keyof typeof OWN_BOUNDS]
    if (value !== undefined && !(value >= least && value <= most))
      return refuse('own-rules', `This figure of your own rules lies between ${least} and ${most}.`)
  }
  return null
}
