import { FilePlus, Plus } from 'lucide-react'
import { LAST_WORD } from '../../engine'
import { setOverlay } from '../store/view'

/** An empty sheet says how to begin, and what it is not. */
export function EmptySheet() {
  return (
    <div className="empty">
      <div>
        <h2>An empty sheet</h2>
        <ol>
          <li>Drag a battery from the shelf, or press P and type “battery”.</li>
          <li>Add a fuse, a bar and a load.</li>
          <li>Drag from terminal to terminal. Joining a load’s feed brings its return.</li>
          <li>
            Give each conductor a length and a size. What is wrong appears at the right, while you draw.
          </li>
        </ol>
        <div className="buttons">
          <button
            type="button"
            className="main"
            onClick={() => setOverlay({ is: 'place-by-name', at: null })}
          >
            <Plus size={16} aria-hidden /> Place the first part
          </button>
          <button type="button" className="plain" onClick={() => setOverlay({ is: 'designs' })}>
            <FilePlus size={16} aria-hidden /> Begin from a demo
          </button>
        </div>
        <p className="caution">
          {LAST_WORD}{' '}
          <button type="button" className="link" onClick={() => setOverlay({ is: 'cautions' })}>
            Cautions
          </button>
        </p>
      </div>
    </div>
  )
}
