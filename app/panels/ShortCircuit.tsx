import { type EndFault, figure, whyNot, whyShortCircuit } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { WhyLines } from './Why'

interface Props {
  readonly conductor: string
  /** Name of the part at an end. */
  readonly at: (end: 'from' | 'to') => string
}

/** The least and the greatest short-circuit current at each end, and what clears it. */
export function ShortCircuit({ conductor, at }: Props) {
  const design = useOpen((s) => s.design)
  const faults = useLatest((s) => s.answers?.faults.runs.get(conductor))
  if (!faults) return null
  return (['to', 'from'] as const).map((end) => (
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
  ))
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
