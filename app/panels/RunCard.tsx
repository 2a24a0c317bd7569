import {
  type Conductor,
  guardWords,
  meteredWords,
  type RunAnswer,
  verdictWords,
  whyAmpacity,
  whyProtected,
} from '../../engine'
import { terminalName } from '../store/join'
import { returnOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { select } from '../store/view'
import { Amount } from './Amount'
import { RunFields } from './RunFields'
import { Why, WhyLines } from './Why'

/** The card of a conductor: where it runs, what it must carry, what protects it, and its own fields. */
export function RunCard({ conductor }: { conductor: Conductor }) {
  const run = useLatest((s) => s.answers?.runs.get(conductor.id))
  const design = useOpen((s) => s.design)
  const back = returnOf(design, conductor.id)
  const mate = back?.id ?? conductor.returnOf
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
        <EndButton label="from" end={conductor.from} />
        <EndButton label="to" end={conductor.to} />
      </p>
      {run && <RunAnswers run={run} />}
      <RunFields conductor={conductor} />
    </>
  )
}

function EndButton({ label, end }: { label: string; end: Conductor['from'] }) {
  return (
    <span>
      {label}{' '}
      <button type="button" className="link" onClick={() => select([end.part])}>
        {terminalName(end)}
      </button>
    </span>
  )
}

function RunAnswers({ run }: { run: RunAnswer }) {
  const design = useOpen((s) => s.design)
  if (run.nature === 'data' || run.nature === 'mains')
    return (
      <p className="quiet">
        {run.nature === 'data'
          ? 'A data link: it carries no supply current and is not counted in the network.'
          : 'Mains: for licensed persons only. Not checked here.'}
      </p>
    )
  const guards = guardWords(run, design)
  const verdict = 'value' in run.verdict ? run.verdict.value : 'not-checked'
  return (
    <div className="answers" data-testid="run-answers">
      <dl>
        <dt>Worst case, from → to</dt>
        <dd data-testid="forward">
          <Why answer={run.forward} />
        </dd>
        <dt>Worst case, to → from</dt>
        <dd data-testid="backward">
          <Why answer={run.backward} />
        </dd>
        <dt>{run.ownFigure ? 'Design current (own figure)' : 'Design current'}</dt>
        <dd>
          <Amount answer={run.design} />
        </dd>
        {run.sustained && (
          <>
            <dt>Lasting fault in the return</dt>
            <dd>
              <Amount answer={run.sustained} />
            </dd>
          </>
        )}
        <dt>Ampacity</dt>
        <dd>
          {'value' in run.ampacity ? (
            <WhyLines
              head={<Amount answer={{ value: run.ampacity.value.amps }} />}
              lines={[
                ...whyAmpacity(run.ampacity.value),
                ...(run.ampacity.value.confirmed ? [] : ['This figure could not be confirmed']),
              ]}
            />
          ) : (
            <Amount answer={run.ampacity} />
          )}
        </dd>
        <dt>Protection</dt>
        <dd className={`verdict ${verdict}`}>
          <WhyLines
            head={
              <b>
                {verdictWords(run, design)}
                {guards && `: ${guards}`}
              </b>
            }
            lines={(['from', 'to'] as const).flatMap((end) => {
              const answer = run[end]
              return 'value' in answer
                ? whyProtected(answer.value, design).map((line) => `At the "${end}" end: ${line}`)
                : []
            })}
          />
        </dd>
        {run.metered && (
          <>
            <dt>Meter</dt>
            <dd>{meteredWords(run)}</dd>
          </>
        )}
      </dl>
    </div>
  )
}
