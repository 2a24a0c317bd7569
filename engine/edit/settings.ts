import type { Design, Settings } from '../model/design'
import { done, set } from './change'
import type { EditOf, EditResult, Refusal } from './edit'
import { refuse } from './refuse'

/** Sets design settings. A rule set that this version does not know is kept: its checks are then not made. */
export function applySettings(design: Design, edit: EditOf<'settings'>): EditResult {
  const fault = settingsFault(edit.set) ?? issuedFault(design, edit.set)
  if (fault) return fault
  const settings = set(design.settings, edit.set)
  return done(settings === design.settings ? design : { ...design, settings })
}

function settingsFault({ systemV, ambientC, coldestC, date, ruleSet }: Partial<Settings>): Refusal | null {
  if (systemV !== undefined && ![12, 24, 48].includes(systemV))
    return refuse('system-voltage', 'The system voltage is 12, 24 or 48 V.')
  for (const celsius of [ambientC, coldestC])
    if (celsius !== undefined && !(celsius >= -60 && celsius <= 100))
      return refuse('temperature', 'A temperature of the surroundings lies between -60 and 100 °C.')
  if (date !== undefined && date !== '' && !isDate(date))
    return refuse('date', 'A date is written year, month, day: 2026-03-04.')
  if (ruleSet !== undefined && ruleSet === '')
    return refuse('no-rule-set', 'A design names the rule set of its checks.')
  return null
}

/** Once there are revisions, number and date come from issuing alone. */
const issuedFault = (design: Design, { revision, date }: Partial<Settings>): Refusal | null =>
  design.revisions?.length &&
  ((revision ?? design.settings.revision) !== design.settings.revision ||
    (date ?? design.settings.date) !== design.settings.date)
    ? refuse('issued', 'Revision and date are set by issuing the design, on the page of revisions.')
    : null

export function isDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const time = Date.parse(`${text}T00:00:00Z`)
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(text)
}
