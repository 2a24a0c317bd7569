import type { Design, Settings } from '../model/design'
import { OWN_BOUNDS, type OwnRules } from '../tables/ownrules'
import { ruleSetByKey } from '../tables/rulesets'
import { done, set } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Sets design settings. A rule set that this version does not know is kept: its checks are then not made. */
export function applySettings(design: Design, edit: EditOf<'settings'>): EditResult {
  const fault = settingsFault(edit.set)
  if (fault) return fault
  const settings = set(design.settings, edit.set)
  return done(settings === design.settings ? design : { ...design, settings })
}

function settingsFault({
  systemV,
  ambientC,
  coldestC,
  date,
  ruleSet,
  ownRules,
}: Partial<Settings>): Refusal | null {
  if (systemV !== undefined && ![12, 24, 48].includes(systemV))
    return refuse('system-voltage', 'The system voltage is 12, 24 or 48 V.')
  for (const celsius of [ambientC, coldestC])
    if (celsius !== undefined && !(celsius >= -60 && celsius <= 100))
      return refuse('temperature', 'A temperature of the surroundings lies between -60 and 100 °C.')
  if (date !== undefined && date !== '' && !isDate(date))
    return refuse('date', 'A date is written year, month, day: 2026-03-04.')
  if (ruleSet !== undefined && ruleSet === '')
    return refuse('no-rule-set', 'A design names the rule set of its checks.')
  return ownRules === undefined ? null : ownRulesFault(ownRules)
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

function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const time = Date.parse(`${text}T00:00:00Z`)
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text)
}
