import { issuedDesign } from '../../kinds/issued'
import type { Design } from '../../model/design'
import type { Comparison } from './changes'
import { compareDesigns } from './compare'
import { standingOf } from './standing'

/** What is new against the revision before: of an issued state the one before it, else the last one that was issued. */
export interface ChangesSince {
  readonly before: Design
  /** Number of that revision. */
  readonly since: string
  /** Letter of the marks: the revision that the changes belong to, with a plus where that has not been issued. */
  readonly letter: string
  readonly comparison: Comparison
}

/** null: there is no revision before this state, or it is not what was issued. Linear. */
export function changesSince(design: Design): ChangesSince | null {
  const standing = standingOf(design)
  if (standing.is === 'never issued') return null
  const since = standing.is === 'issued' ? design.revisions?.at(-2) : standing.since
  const before = since && issuedDesign(design, since.number)
  if (!before) return null
  const letter = standing.is === 'issued' ? standing.revision.number : `${since.number}+`
  return { before, since: since.number, letter, comparison: compareDesigns(before, design) }
}
