import type { PartId } from '../model/design'
import { looseEnd } from './looseend'
import type { Case } from './rule'
import { unfed } from './unfed'

const remembered = new WeakMap<Case, ReadonlySet<PartId>>()

/** Parts of which J2 or J6 tells that nothing feeds them: what is not known of them is told with that. Once for each case. */
export function unfedParts(c: Case): ReadonlySet<PartId> {
  const known = remembered.get(c)
  if (known) return known
  const parts = new Set([...looseEnd.check(c), ...unfed.check(c)].flatMap((f) => f.parts))
  remembered.set(c, parts)
  return parts
}
