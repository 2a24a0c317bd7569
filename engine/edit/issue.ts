import { issuedDesign } from '../kinds/issued'
import type { Design } from '../model/design'
import { frozen, withRevisionsOf } from '../model/revision'
import { withRecordsOf } from '../model/workrecords'
import { done } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'
import { isDate } from './settings'

const [MOST_NUMBER, MOST_BY, MOST_REASON] = [10, 200, 2000]

/** Gives out the design as it is now, under a number. What is issued is never changed afterwards. */
export function applyIssue(design: Design, edit: EditOf<'issue'>): EditResult {
  const [number, by, reason] = [edit.number.trim(), edit.by.trim(), edit.reason.trim()]
  const { date } = edit
  if (number === '') return refuse('no-number', 'A revision has a number or a letter.')
  if (number.length > MOST_NUMBER)
    return refuse('long-number', `The number of a revision has at most ${MOST_NUMBER} letters and digits.`)
  const before = design.revisions ?? []
  if (before.some((r) => r.number.toLowerCase() === number.toLowerCase()))
    return refuse('issued-already', `Revision ${number} has been issued already; it cannot be issued again.`)
  if (!isDate(date)) return refuse('date', 'A date is written year, month, day: 2026-03-04.')
  const last = before.at(-1)
  if (last && date < last.date)
    return refuse('earlier-date', `Revision ${last.number} was issued on ${last.date}: this one comes later.`)
  if (by === '') return refuse('no-name', 'Say who issues it; the name is printed.')
  if (reason === '') return refuse('no-reason', 'Say in a few words why it is issued; it is printed.')
  if (by.length > MOST_BY || reason.length > MOST_REASON)
    return refuse('long-reason', `A name has at most ${MOST_BY} letters, a reason ${MOST_REASON}.`)
  const state = { ...design, settings: { ...design.settings, revision: number, date } }
  return done({ ...state, revisions: [...before, frozen(state, { number, date, by, reason })] })
}

/**
 * Makes what was issued the present state again. Revisions, and what is recorded of the work, stay as they are now; it
 * still counts as changed since the last revision, unless that is the one.
 */
export function applyTakeBack(design: Design, { number }: EditOf<'take back'>): EditResult {
  if (!design.revisions?.some((r) => r.number === number))
    return refuse('not-issued', `There is no revision ${number}.`)
  const issued = issuedDesign(design, number)
  if (!issued)
    return refuse('damaged', `What is kept of revision ${number} is not what was issued: it is not used.`)
  return done(withRevisionsOf({ ...withRecordsOf(issued, design), id: design.id }, design))
}
