import type { Design, Revision } from '../model/design'
import { frozenText } from '../model/revision'
import { readDesign } from './readdesign'

/** A revision is never changed in place, so what it held is remembered weakly. */
const thawed = new WeakMap<Revision, Design | null>()

/**
 * The design as a revision was issued, with the revisions up to that one; null: there is no such revision, or it does
 * not stand up to its digest. The same object for the same revision of the same design. Linear at first.
 */
export function issuedDesign({ revisions = [] }: Design, number: string): Design | null {
  const at = revisions.findIndex((r) => r.number === number)
  const revision = revisions[at]
  if (!revision) return null
  const known = thawed.get(revision)
  if (known !== undefined) return known
  const text = frozenText(revision)
  const state = text === null ? undefined : readDesign(text).design
  const design = state ? { ...state, revisions: revisions.slice(0, at + 1) } : null
  thawed.set(revision, design)
  return design
}
