import { openCopy } from '../files/session'
import { useOpen } from '../store/open'

/** This tab only looks, because another one writes: it says so, and offers a copy. */
export function TwoTabs() {
  const reading = useOpen((s) => s.hold === 'reading')
  if (!reading) return null
  return (
    <div className="two-tabs" role="alert">
      Another tab has this design open. Here you can look, not change.
      <button type="button" className="plain" onClick={() => void openCopy()}>
        Open a copy
      </button>
    </div>
  )
}
