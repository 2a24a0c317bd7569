import { remembering } from '../math/remember'
import type { PartId } from '../model/design'
import { looseEnd } from './looseend'
import type { Case } from './rule'
import { unfed } from './unfed'

/** Parts of which J2 or J6 tells that nothing feeds them: what is not known of them is told with that. Once for each case. */
export const unfedParts = remembering(
  (c: Case): ReadonlySet<PartId> =>
    new Set([...looseEnd.check(c), ...unfed.check(c)].flatMap((f) => f.parts)),
)
