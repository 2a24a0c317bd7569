import { ArrowDown, ArrowUp, X } from 'lucide-react'
import { type Design, drawingNotes, type NoteLine } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { say } from '../store/say'
import { TextInput } from './TextInput'

/** The numbered notes of the drawing: written over, put in order, taken off; parts keep the notes that they refer to. */
export function DrawingNotes({ design }: { design: Design }) {
  const disabled = useOpen((s) => s.hold !== 'writing')
  const notes: readonly NoteLine[] = drawingNotes(design).map((text, i) => ({ text, was: i + 1 }))
  const set = (what: string, next: readonly NoteLine[]) => doEdit(what, { do: 'notes', notes: next })
  const swap = (i: number, k: number) => {
    const next = [...notes]
    ;[next[i], next[k]] = [next[k]!, next[i]!]
    if (set(`Move note ${i + 1}`, next)) say(`Note ${i + 1} is now note ${k + 1}.`)
  }
  return (
    <section className="notes" aria-label="Drawing notes">
      <h3>Drawing notes</h3>
      <ol>
        {notes.map(({ text, was }, i) => {
          const users = design.parts.filter((p) => p.notes?.includes(i + 1)).map((p) => p.designation)
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a note is its number
            <li key={i}>
              <span className="number" aria-hidden>
                {i + 1}
              </span>
              <div>
                <TextInput
                  label={`Note ${i + 1}`}
                  lines={2}
                  value={text}
                  disabled={disabled}
                  onChange={(words) => set(`Change note ${i + 1}`, notes.with(i, { text: words, was }))}
                />
                {users.length > 0 && <p className="quiet">At {users.join(', ')}</p>}
              </div>
              <span className="buttons">
                <button
                  type="button"
                  className="icon"
                  aria-label={`Note ${i + 1} up`}
                  disabled={disabled || i === 0}
                  onClick={() => swap(i, i - 1)}
                >
                  <ArrowUp size={14} aria-hidden />
                </button>
                <button
                  type="button"
                  className="icon"
                  aria-label={`Note ${i + 1} down`}
                  disabled={disabled || i === notes.length - 1}
                  onClick={() => swap(i, i + 1)}
                >
                  <ArrowDown size={14} aria-hidden />
                </button>
                <button
                  type="button"
                  className="icon"
                  aria-label={`Delete note ${i + 1}`}
                  disabled={disabled}
                  onClick={() => set(`Delete note ${i + 1}`, notes.toSpliced(i, 1))}
                >
                  <X size={14} aria-hidden />
                </button>
              </span>
            </li>
          )
        })}
        <li>
          <span className="number" aria-hidden>
            {notes.length + 1}
          </span>
          <TextInput
            key={notes.length}
            label="New note"
            placeholder="New note"
            value=""
            disabled={disabled}
            onChange={(words) => set('Add a note', [...notes, { text: words, was: null }])}
          />
        </li>
      </ol>
      <p className="quiet">
        Printed as a numbered list; a part can carry flags with the numbers of its notes.
      </p>
    </section>
  )
}
