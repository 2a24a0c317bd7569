import {
  type Conductor,
  figure,
  guardWords,
  meteredWords,
  partById,
  partName,
  type RunAnswer,
  type TerminalRef,
  verdictWords,
  whyAmpacity,
} from '../../engine'
import { useOpen } from '../store/open'
import { Amount } from './Amount'
import { EndRow } from './EndRow'
import { Why, WhyLines } from './Why'

/** What was computed for a conductor, each figure with its derivation behind "why?". */
export function RunAnswers({ run, conductor }: { run: RunAnswer; conductor: Conductor }) {
  const design = useOpen((s) => s.design)
  const designation = (end: TerminalRef) => partById(design, end.part)?.designation ?? end.part
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
            <dt>Lasting fault</dt>
            <dd>
              <Sustained answer={run.sustained} />
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
          <b>
            {verdictWords(run, design)}
            {guards && `: ${guards}`}
          </b>
        </dd>
        <EndRow at={designation(conductor.from)} answer={run.from} />
        <EndRow at={designation(conductor.to)} answer={run.to} />
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

/** The most that a return can carry for as long as no fuse blows. */
function Sustained({ answer }: { answer: NonNullable<RunAnswer['sustained']> }) {
  const design = useOpen((s) => s.design)
  if ('notChecked' in answer) return <Amount answer={answer} />
  const { amps, guards } = answer.value
  const lines = guards.map((g) => `${partName(design, g.part)} limits it to ${figure(g.amps, 'A')}`)
  return <WhyLines head={<Amount answer={{ value: amps }} />} lines={lines} />
}
