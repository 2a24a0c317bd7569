import { LocateFixed, X } from 'lucide-react'
import type { ScheduleRow } from '../../../engine'
import { useLatest } from '../../store/latest'
import { Marks } from '../../symbols/Marks'
import { linePath } from '../../symbols/shape'
import { showOnDrawing } from '../goto'
import { cropOf } from './crop'

/** The piece of the drawing that a row speaks of. */
export function OnTheDrawing({ row, onClose }: { row: ScheduleRow; onClose: () => void }) {
  const scene = useLatest((s) => s.scene)
  const crop = scene && cropOf(scene, row)
  return (
    <aside className="place" aria-label={`${row.name} on the drawing`}>
      <header>
        <h2>{row.name}</h2>
        <button type="button" className="plain" onClick={() => showOnDrawing(row)}>
          <LocateFixed size={16} aria-hidden /> Go to it
        </button>
        <button type="button" className="icon" aria-label="Close the piece of the drawing" onClick={onClose}>
          <X size={16} aria-hidden />
        </button>
      </header>
      {crop ? (
        <svg viewBox={crop.viewBox} role="img" aria-label={`The drawing round ${row.name}`}>
          {crop.marked.map((c) => (
            <path key={`mark ${c.id}`} className="marked" d={linePath(c.points)} />
          ))}
          {crop.boxes.map((b) => (
            <rect
              key={`${b.x} ${b.y}`}
              className="marked"
              x={b.x - 1}
              y={b.y - 1}
              width={b.w + 2}
              height={b.h + 2}
            />
          ))}
          {crop.conductors.map((c) => (
            <path key={c.id} className={`run ${c.nature}`} d={linePath(c.points)} />
          ))}
          {crop.parts.map((p) => (
            <g key={p.id} transform={`translate(${p.x} ${p.y})`}>
              <Marks marks={p.marks} />
            </g>
          ))}
          {crop.labels.map((l) => (
            <g key={`${l.x} ${l.y}`} transform={`translate(${l.x} ${l.y})${l.turn ? ' rotate(-90)' : ''}`}>
              <Marks marks={l.marks} />
            </g>
          ))}
        </svg>
      ) : (
        <p className="quiet">
          The view that is open does not draw it. Go to it, and choose another view at the top.
        </p>
      )}
    </aside>
  )
}
