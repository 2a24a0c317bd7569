import { ArrowLeftRight } from 'lucide-react'
import type { ChangeRow, Design, SceneView } from '../../../engine'
import { ChangeList } from './ChangeList'
import { type Outcome, useCompared } from './compared'
import { Drawings } from './Drawings'
import { choosePair, setBeside, setView, useLooking } from './looking'
import { type StateChoice, stateOf, statesOf, usualPair } from './states'

const VIEWS: readonly (readonly [SceneView, string])[] = [
  ['single-line', 'Single-line'],
  ['both-poles', 'Both poles'],
  ['data', 'Data links'],
]

/** Two states against each other, or one alone: what to look at, the drawings, and the list beside them. */
export function Comparing({ design }: { design: Design }) {
  const { pair, alone, beside, view, row } = useLooking()
  const states = statesOf(design)
  const known = (key: string): boolean => states.some((s) => s.key === key)
  const { from, to } = pair && known(pair.from) && known(pair.to) ? pair : usualPair(design)
  const one = alone !== null && known(alone) ? alone : null
  const [before, after] = [stateOf(design, one ?? from), stateOf(design, one ?? to)]
  const outcome = useCompared(before, after, view)
  const titleOf = (key: string): string => states.find((s) => s.key === key)?.title ?? key
  const titles = { before: titleOf(one ?? from), after: titleOf(one ?? to) }
  const rows = one === null && outcome.is === 'done' ? outcome.compared.rows : []
  return (
    <div className={`comparing${one === null ? '' : ' alone'}`}>
      <div className="choose">
        {one === null ? (
          <>
            <Choice label="Before" states={states} value={from} onChange={(key) => choosePair(key, to)} />
            <button
              type="button"
              className="icon"
              aria-label="Swap the two"
              onClick={() => choosePair(to, from)}
            >
              <ArrowLeftRight size={16} aria-hidden />
            </button>
            <Choice label="After" states={states} value={to} onChange={(key) => choosePair(from, key)} />
            <Switch
              label="Drawings"
              value={beside}
              options={[
                [false, 'Marked on one'],
                [true, 'Side by side'],
              ]}
              onChange={setBeside}
            />
          </>
        ) : (
          <p className="only-look">
            <b>{titles.after}</b> as it was issued. It can be looked at, not changed.
          </p>
        )}
        <Switch label="Drawn as" value={view} options={VIEWS} onChange={setView} />
      </div>
      {before === null || after === null ? (
        <p className="failure" role="alert">
          One of these revisions is not what was issued: it cannot be compared.
        </p>
      ) : (
        <Shown
          {...{ outcome, titles, rows, picked: row, shown: one ? 'alone' : beside ? 'beside' : 'marked' }}
        />
      )}
    </div>
  )
}

interface ShownProps {
  readonly outcome: Outcome
  readonly titles: { readonly before: string; readonly after: string }
  readonly rows: readonly ChangeRow[]
  readonly picked: string | null
  readonly shown: 'marked' | 'beside' | 'alone'
}

function Shown({ outcome, titles, rows, picked, shown }: ShownProps) {
  if (outcome.is === 'working') return <p className="waiting">Being checked and drawn…</p>
  if (outcome.is === 'failed')
    return (
      <p className="failure" role="alert">
        They could not be compared: {outcome.why}
      </p>
    )
  return (
    <div className="both">
      <Drawings
        compared={outcome.compared}
        titles={titles}
        row={rows.find((r) => r.key === picked) ?? null}
        shown={shown}
      />
      {shown !== 'alone' && (
        <section className="list" aria-label="What changed">
          <h2>
            What changed <span className="count">{rows.length}</span>
          </h2>
          <ChangeList rows={rows} picked={picked} />
        </section>
      )}
    </div>
  )
}

interface ChoiceProps {
  readonly label: string
  readonly states: readonly StateChoice[]
  readonly value: string
  readonly onChange: (key: string) => void
}

function Choice({ label, states, value, onChange }: ChoiceProps) {
  return (
    <label className="choice">
      <span>{label}</span>
      <select value={value} onChange={(e) => onChange(e.target.value)}>
        {states.map((s) => (
          <option key={s.key} value={s.key}>
            {s.title}
          </option>
        ))}
      </select>
    </label>
  )
}

interface SwitchProps<T> {
  readonly label: string
  readonly value: T
  readonly options: readonly (readonly [T, string])[]
  readonly onChange: (value: T) => void
}

function Switch<T extends string | boolean>({ label, value, options, onChange }: SwitchProps<T>) {
  return (
    <div role="radiogroup" aria-label={label} className="switch">
      {options.map(([key, text]) => (
        // biome-ignore lint/a11y/useSemanticElements: a row of buttons, one of them on
        <button
          key={String(key)}
          type="button"
          role="radio"
          aria-checked={value === key}
          onClick={() => onChange(key)}
        >
          {text}
        </button>
      ))}
    </div>
  )
}
