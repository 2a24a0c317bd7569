import { type Answer, figure, type MaybeUnlimited, type Unit, whyNot } from '../../engine'
import { useOpen } from '../store/open'

/** A computed figure, or why there is none. */
export function Amount({ answer, unit = 'A' }: { answer: Answer<MaybeUnlimited>; unit?: Unit }) {
  const design = useOpen((s) => s.design)
  if ('value' in answer) return <b className="figure">{figure(answer.value, unit)}</b>
  return <span className="no-answer">{whyNot(answer, design)}</span>
}
