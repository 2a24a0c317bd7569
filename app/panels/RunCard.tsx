import { Unplug } from 'lucide-react'
import type { Conductor } from '../../engine'
import { terminalName } from '../store/join'
import { returnOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { select, setOverlay, useView } from '../store/view'
import { BandPlotView } from './BandPlotView'
import type { RunKey } from './differing'
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
        <End of={conductor} end="from" /> → <End of={conductor} end="to" />
      </p>
      {run && <RunAnswers run={run} conductor={conductor} />}
      {asOne && (
        <p className="quiet">
          One line, two conductors: what you set here is set on both, the colour and the remark on{' '}
          {conductor.number} alone.
        </p>
      )}
      <RunFields
        conductor={conductor}
        all={asOne ? [conductor.id, mate] : [conductor.id]}
        apart={asOne ? APART : []}
      />
      <BandPlotView conductor={conductor.id} />
    </>
  )
}

/** A return has a colour and a remark of its own. */
const APART: readonly RunKey[] = ['colour', 'remark']

/** One end: a way to its part, and to take it elsewhere. */
function End({ of, end }: { of: Conductor; end: 'from' | 'to' }) {
  const writing = useOpen((s) => s.hold === 'writing')
  const name = terminalName(of[end])
  return (
    <span className="end">
      <button type="button" className="link" onClick={() => select([of[end].part])}>
        {name}
      </button>
      <button
        type="button"
        className="icon small"
        disabled={!writing}
        aria-label={`Take the end at ${name} elsewhere`}
        title="Take this end elsewhere"
        onClick={() => setOverlay({ is: 'reconnect', conductor: of.id, end })}
      >
        <Unplug size={14} aria-hidden />
      </button>
    </span>
  )
}
