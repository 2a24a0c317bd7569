import { useMemo } from 'react'
import { standingWords } from '../../engine'
import { useOpen } from '../store/open'
import { setStage } from '../store/view'

/** Which revision the design is, and whether it was issued; leads to the page of revisions. */
export function StandingBadge() {
  const design = useOpen((s) => s.design)
  const { revision, called, status, issued } = useMemo(() => standingWords(design), [design])
  if (revision === '') return null
  return (
    <button
      type="button"
      className={`standing${issued ? '' : ' open'}`}
      aria-label={`Revision ${revision}: ${status}`}
      title={status}
      onClick={() => setStage('revisions')}
    >
      {called.replace('the state ', '').replace('revision', 'rev.')}
    </button>
  )
}
