import { noOperatingWords, operatingNoteWords } from '../../engine'
import { AllSun } from './AllSun'
import { ControlRow } from './ControlRow'
import { groupsOf } from './groups'
import { Readings } from './Readings'
import { put, putAllBack, useTrial } from './trial'

/** What stands beside the sheet while a design is tried out: readings, notes, and every switch in a list. */
export function TryPanel() {
  const trial = useTrial((s) => s.trial)
  if (!trial) return null
  const { design, controls, state, point } = trial
  return (
    <aside className="side trying" aria-label="Trying it out">
      <Readings trial={trial} />
      <section aria-label="Notes" className="notes" role="status">
        {!point.ok && <p className="failure">{noOperatingWords(point, design)}</p>}
        {point.ok && point.notes.length > 0 && (
          <ul>
            {point.notes.map((note) => {
              const words = operatingNoteWords(note, design)
              return <li key={words}>{words}</li>
            })}
          </ul>
        )}
      </section>
      <div className="buttons">
        <button type="button" className="plain" onClick={() => put({ set: 'loads', share: 1 })}>
          All loads on
        </button>
        <button type="button" className="plain" onClick={() => put({ set: 'loads', share: 0 })}>
          All loads off
        </button>
        <button type="button" className="plain" onClick={putAllBack}>
          As usual
        </button>
      </div>
      {groupsOf(design, controls).map(({ title, members }) => (
        <details key={title} open={title !== 'Fuses'} className="controls">
          <summary>{title}</summary>
          {title === 'Sun' && members.length > 1 && <AllSun members={members} state={state} />}
          <ul>
            {members.map((c) => (
              <ControlRow key={`${c.is} ${c.id}`} control={c} design={design} state={state} point={point} />
            ))}
          </ul>
        </details>
      ))}
    </aside>
  )
}
