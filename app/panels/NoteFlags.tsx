import { drawingNotes, type Part } from '../../engine'
import { doEdit, useOpen } from '../store/open'

/** Which drawing notes a part refers to: a flag with the number stands beside it. */
export function NoteFlags({ part }: { part: Part }) {
  const design = useOpen((s) => s.design)
  const disabled = useOpen((s) => s.hold !== 'writing')
  const notes = drawingNotes(design)
  if (notes.length === 0) return null
  const own = part.notes ?? []
  return (
    <fieldset className="noteflags">
      <legend>Drawing notes</legend>
      {notes.map((text, i) => {
        const number = i + 1
        const on = own.includes(number)
        return (
          <label key={number}>
            <input
              type="checkbox"
              checked={on}
              disabled={disabled}
              onChange={() =>
                doEdit(`${on ? 'Take' : 'Put'} note ${number} ${on ? 'off' : 'at'} ${part.designation}`, {
                  do: 'refer',
                  part: part.id,
                  notes: on ? own.filter((n) => n !== number) : [...own, number],
                })
              }
            />
            <span>
              <b>{number}</b> {text}
            </span>
          </label>
        )
      })}
    </fieldset>
  )
}
