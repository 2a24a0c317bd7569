import {
  type Conductor,
  meteredWords,
  partById,
  type RunAnswer,
  ruleSetOf,
  type TerminalRef,
} from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { glanceOf } from './glance'
import { RunDrop } from './RunDrop'
import { RunGlance } from './RunGlance'
import { ShortCircuit } from './ShortCircuit'
import { Why } from './Why'

/** What was computed for a conductor: the three figures that decide, then the rest, each with its derivation. */
export function RunAnswers({ run, conductor }: { run: RunAnswer; conductor: Conductor }) {
  const design = useOpen((s) => s.design)
  const standIn = useLatest((s) => s.findings.find((f) => f.rule === 'X2')?.facts.used)
  const designation = (end: TerminalRef) => partById(design, end.part)?.designation ?? end.part
  if (run.nature === 'data' || run.nature === 'mains')
    return (
      <p className="quiet">
        {run.nature === 'data'
          ? 'A data link: it carries no supply current and is not counted in the network.'
          : 'Mains: for licensed persons only. Not checked here.'}
      </p>
    )
  const ruleSet = ruleSetOf(design)
  const { carries } = glanceOf(run)
  return (
    <div className="answers" data-testid="run-answers">
      {!ruleSet && (
        <p className="failure">
          This version does not know the rule set "{design.settings.ruleSet}".
          {standIn && ` These figures are by another one: ${standIn}.`}
        </p>
      )}
      <RunGlance run={run} at={(end) => designation(conductor[end])} />
      <dl>
        {run.ownFigure && (
          <>
            <dt>Computed {carries.way}</dt>
            <dd>
              <Why answer={carries.witness} />
            </dd>
          </>
        )}
        {carries.other && (
          <>
            <dt>Worst case {carries.other.way}</dt>
            <dd data-testid={carries.other.testId}>
              <Why answer={carries.other.answer} />
            </dd>
          </>
        )}
        <RunDrop conductor={conductor.id} />
        <ShortCircuit run={run} conductor={conductor.id} at={(end) => designation(conductor[end])} />
        {run.metered && (
          <>
            <dt>Meter</dt>
            <dd>{meteredWords(run)}</dd>
          </>
        )}
      </dl>
      {ruleSet && <p className="by-rules">By {ruleSet.title}</p>}
    </div>
  )
}
