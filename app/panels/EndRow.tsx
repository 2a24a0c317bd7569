import { type EndAnswer, partName, type RunAnswer, whyProtected } from '../../engine'
import { useOpen } from '../store/open'
import { Amount } from './Amount'
import { WhyLines } from './Why'

/** What protects a conductor at one end: the greatest lasting fault that can be fed in there, and what limits it. */
export function EndRow({ at, answer }: { at: string; answer: RunAnswer['from'] }) {
  const design = useOpen((s) => s.design)
  return (
    <>
      <dt>Fault fed in at {at}</dt>
      <dd>
        {'value' in answer ? (
          <WhyLines
            head={
              <>
                <Amount answer={{ value: answer.value.amps }} />
                <small> {limits(answer.value, (id) => partName(design, id))}</small>
              </>
            }
            lines={whyProtected(answer.value, design)}
          />
        ) : (
          <Amount answer={answer} />
        )}
      </dd>
    </>
  )
}

function limits({ amps, guards }: EndAnswer, nameOf: (id: string) => string): string {
  if (amps === 'unlimited') return 'nothing limits it'
  const names = [...new Set(guards.map((g) => nameOf(g.part).split(' ')[0]))]
  return names.length ? `by ${names.join(', ')}` : 'nothing feeds it'
}
