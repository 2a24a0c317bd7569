import { useView } from '../store/view'
import { backToDrawing } from './trial'

/** Says clearly that this is not drawing, and how to get back. */
export function TryBanner() {
  const trying = useView((s) => s.trying)
  if (!trying) return null
  return (
    <div className="try-banner" role="status" aria-label="Trying it out">
      <span>
        <b>Trying it out.</b> Touch a switch, fuse, load or source to flip it. The design stays as it is. One
        reckoned state: no measurement, no proof.
      </span>
      <button type="button" className="main" onClick={backToDrawing}>
        Back to the drawing <kbd>Esc</kbd>
      </button>
    </div>
  )
}
