import { Power } from 'lucide-react'
import { useView } from '../store/view'
import { toggleTrying } from './trial'

/** Turns the drawing into a thing in use, and back. */
export function TrySwitch() {
  const trying = useView((s) => s.trying)
  return (
    <div className="cell lenses">
      <button
        type="button"
        aria-pressed={trying}
        aria-label="Try it"
        title="Try it out (Y)"
        onClick={toggleTrying}
      >
        <Power size={18} aria-hidden /> <span className="word">Try it</span>
      </button>
    </div>
  )
}
