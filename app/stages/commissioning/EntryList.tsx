import { type EntryRecord, entryNotes, foundWords, signedWords, whoWhen } from '../../../engine'
import { StateMark } from './StateMark'

/** What was entered, newest first: what failed stays in sight beside what was retested. */
export function EntryList({ entries }: { entries: readonly EntryRecord[] }) {
  if (entries.length === 0) return null
  return (
    <ol className="test-entries" aria-label="Entered so far, newest first" reversed>
      {[...entries].reverse().map((e) => (
        <li key={e.entry.id} className={e.outOfDate ? 'old' : ''}>
          <StateMark state={e.result} word />
          <strong>{foundWords(e)}</strong>
          <span>{whoWhen(e.entry)}</span>
          {e.entry.remark !== '' && <em>{e.entry.remark}</em>}
          {[...entryNotes(e), signedWords(e)]
            .filter((note) => note !== '')
            .map((note) => (
              <span key={note} className="note">
                {note}
              </span>
            ))}
        </li>
      ))}
    </ol>
  )
}
