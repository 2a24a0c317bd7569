import { type ReadingState, STATE_WORDS } from '../../../engine'

const SIGNS: Readonly<Record<ReadingState, string>> = {
  passed: '✓',
  failed: '✕',
  'out-of-date': '↻',
  'not-done': '',
}

/** How something stands: a sign of its own, so that it is told without colour, and the word. */
export function StateMark({ state, word = false }: { state: ReadingState; word?: boolean }) {
  return (
    <span className={`test-state ${state}`}>
      <span className="sign" aria-hidden>
        {SIGNS[state]}
      </span>
      <span className={word ? '' : 'unseen'}>{STATE_WORDS[state]}</span>
    </span>
  )
}
