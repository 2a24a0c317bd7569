import { issuedDesign } from '../../kinds/issued'
import { remembering } from '../../math/remember'
import type { Design, Revision } from '../../model/design'
import { isUnchanged } from './changes'
import { compareDesigns } from './compare'

/** Where a design stands between its revisions. */
export type Standing =
  | { readonly is: 'never issued' }
  /** Exactly as it was issued. */
  | { readonly is: 'issued'; readonly revision: Revision }
  /** Changed since, or the revision cannot be read and so nobody can tell. */
  | { readonly is: 'changed'; readonly since: Revision; readonly damaged: boolean }

/** Remembered for each design; linear at first. */
export const standingOf: (design: Design) => Standing = remembering(found)

function found(design: Design): Standing {
  const last = design.revisions?.at(-1)
  if (!last) return { is: 'never issued' }
  const issued = issuedDesign(design, last.number)
  return issued && isUnchanged(compareDesigns(issued, design))
    ? { is: 'issued', revision: last }
    : { is: 'changed', since: last, damaged: issued === null }
}
