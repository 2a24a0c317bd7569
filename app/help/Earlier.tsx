import { useEffect, useState } from 'react'
import { readDesign, withRevisionsOf } from '../../engine'
import type { Point } from '../files/database'
import { keepPoint, listPoints } from '../files/points'
import { takeState, useOpen } from '../store/open'
import { refuse, say } from '../store/say'
import { clearSelection } from '../store/view'
import { Sheet } from './Sheet'

/** Named earlier states of the open design; taking one back is one step that can be undone. */
export function Earlier({ onClose }: { onClose: () => void }) {
  const design = useOpen((s) => s.design)
  const writing = useOpen((s) => s.hold === 'writing')
  const [points, setPoints] = useState<readonly Point[] | null>(null)
  useEffect(() => {
    void listPoints(design.id).then(setPoints, () => setPoints([]))
  }, [design.id])
  const restore = async (point: Point) => {
    const read = readDesign(point.text)
    if (!read.design) return refuse('This state cannot be read any more.')
    await keepPoint(design, 'Before going back').catch(() => {})
    takeState(`Go back to "${point.name}"`, withRevisionsOf(read.design, design))
    clearSelection()
    say(`Gone back to "${point.name}". Undo takes it back.`)
    onClose()
  }
  return (
    <Sheet
      title="Earlier states of this design"
      about="The newest 20, kept in this browser: on opening, every half hour of editing, and before sizes are chosen."
      narrow
      onClose={onClose}
    >
      {points?.length === 0 && <p className="quiet">None yet. The first is kept with the first edit.</p>}
      <ol className="points">
        {points?.map((point) => (
          <li key={point.key}>
            <span>
              <b>{point.name}</b>
              <small>
                {new Date(point.at).toLocaleString()} · {point.parts} parts, {point.conductors} conductors
              </small>
            </span>
            <button
              type="button"
              className="plain"
              disabled={!writing}
              aria-label={`Go back to "${point.name}", ${new Date(point.at).toLocaleString()}`}
              onClick={() => void restore(point)}
            >
              Go back to it
            </button>
          </li>
        ))}
      </ol>
    </Sheet>
  )
}
