import { breakingWords, type EndFault, figure, type RunAnswer, whyNot, whyShortCircuit } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { WhyLines } from './Why'

interface Props {
  readonly run: RunAnswer
  readonly conductor: string
  /** Name of the part at an end. */
  readonly at: (end: 'from' | 'to') => string
}

/** The least and the greatest short-circuit current at each end, what clears it, and what its devices interrupt. */
export function ShortCircuit({ run, conductor, at }: Props) {
  const design = useOpen((s) => s.design)
  const faults = useLatest((s) => s.answers?.faults.runs.get(conductor))
  if (!faults) return null
  const interrupts = breakingWords(run, design)
  return (
    <>
      {(['to', 'from'] as const).map((end) => (
        <div className="row" key={end}>
          <dt>Short circuit at {at(end)}</dt>
          <dd>
            <WhyLines
              head={<Range fault={faults[end]} />}
              lines={[
                ...[faults[end].least, faults[end].greatest].flatMap((a) =>
                  'notChecked' in a ? [whyNot(a, design)] : [],
                ),
                ...whyShortCircuit(faults[end], design),
              ]}
            />
          </dd>
        </div>
      ))}
      {interrupts.length > 0 && (
        <div className="row">
          <dt>Breaking capacity</dt>
          <dd>{interrupts.join(', ')}</dd>
        </div>
      )}
    </>
  )
}

/** "1020 A to 3300 A": from the least to the greatest. */
function Range({ fault: { least, greatest } }: { fault: EndFault }) {
  const words = (answer: EndFault['least'] | EndFault['greatest']) =>
    'value' in answer ? figure(answer.value, 'A') : '?'
  const unknown = 'notChecked' in least || 'notChecked' in greatest
  return (
    <>
      <b className="figure">{words(least)}</b> <small>to</small> <b className="figure">{words(greatest)}</b>
      {unknown && <small> not checked</small>}
    </>
  )
}
