import type { Accepted, Design } from '../model/design'
import { done } from './change'
import type { EditOf, EditResult } from './edit'
import { refuse } from './refuse'
import { isDate } from './settings'

/** Longest text of a reason, letters. */
const MOST = 2000

/** Lets a finding stand for a written reason; accepted once more, the newer reason counts. */
export function applyAccept(design: Design, { accepted }: EditOf<'accept'>): EditResult {
  const reason = accepted.reason.trim()
  if (reason === '')
    return refuse('no-reason', 'A finding is accepted with a reason in writing; it is printed.')
  if (reason.length > MOST) return refuse('long-reason', `A reason has at most ${MOST} letters.`)
  if (accepted.date && !isDate(accepted.date))
    return refuse('date', 'A date is written year, month, day: 2026-03-04.')
  const others = (design.accepted ?? []).filter((a) => a.key !== accepted.key)
  return done({ ...design, accepted: [...others, { ...accepted, reason }] })
}

/** Opens an accepted finding again. */
export function applyUnaccept(design: Design, { key }: EditOf<'unaccept'>): EditResult {
  if (!design.accepted?.some((a) => a.key === key))
    return refuse('not-accepted', 'This finding has not been accepted.')
  return done(withAccepted(design, (a) => a.key !== key))
}

/** Without what was accepted about things that leave the drawing: their ids may be given out again. */
export function acceptedWithout(design: Design, gone: ReadonlySet<string>): Design {
  if (!design.accepted) return design
  return withAccepted(design, (a) => !a.key.split(' ').some((id) => gone.has(id)))
}

function withAccepted(design: Design, keep: (a: Accepted) => boolean): Design {
  const left = (design.accepted ?? []).filter(keep)
  if (left.length === design.accepted?.length) return design
  const { accepted: _all, ...rest } = design
  return left.length === 0 ? rest : { ...rest, accepted: left }
}
