import type { Conductor } from '../../engine'
import { terminalName } from '../store/join'
import { returnOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { select, useView } from '../store/view'
import { RunAnswers } from './RunAnswers'
import { RunFields } from './RunFields'

/** The card of a conductor: where it runs, what it must carry, what protects it, and its own fields. */
export function RunCard({ conductor }: { conductor: Conductor }) {
  const run = useLatest((s) => s.answers?.runs.get(conductor.id))
  const design = useOpen((s) => s.design)
  const back = returnOf(design, conductor.id)
  const mate = back?.id ?? conductor.returnOf
  // In the single-line view one line stands for both: what is set on it is set on both.
  const asOne = useView((v) => v.view === 'single-line') && mate !== null
  return (
    <>
      <header>
        <h2>
          {conductor.number} <span className="kind">Conductor{conductor.returnOf ? ', return' : ''}</span>
        </h2>
        {mate && (
          <button type="button" className="link" onClick={() => select([], [mate])}>
            {back ? `Its return ${back.number}` : 'Its feed'}
          </button>
        )}
      </header>
      <p className="from-to">
        <EndButton end={conductor.from} /> → <EndButton end={conductor.to} />
      </p>
      {run && <RunAnswers run={run} />}
      {asOne && <p className="quiet">One line, two conductors: what you set here is set on both.</p>}
      <RunFields conductor={conductor} all={asOne ? [conductor.id, mate] : [conductor.id]} />
    </>
  )
}

function EndButton({ end }: { end: Conductor['from'] }) {
  return (
    <button type="button" className="link" onClick={() => select([end.part])}>
      {terminalName(end)}
    </button>
  )
}
