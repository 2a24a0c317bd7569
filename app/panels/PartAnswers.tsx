import { type Answer, figure, type Part, readingErrorWords, type WorstCase } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { Why } from './Why'

/** What was computed for a part: the worst case in each of its branches, its bar, its shunt. */
export function PartAnswers({ part }: { part: Part }) {
  const answers = useLatest((s) => s.answers)
  const design = useOpen((s) => s.design)
  if (!answers) return null
  const branches = [...answers.branches.values()].filter((b) => b.part === part.id)
  const bar = answers.bars.get(part.id)
  const shunt = answers.shunts.get(part.id)
  if (!branches.length && !bar && !shunt) return null
  return (
    <div className="answers">
      <h3>Worst case</h3>
      <dl>
        {branches.map((b) => (
          <Row key={b.key} name={b.key} worst={b.worst} rating={b.ratingA} />
        ))}
        {bar && <Row name="through the bar" worst={bar} rating={null} />}
      </dl>
      {shunt && readingErrorWords(shunt, design).map((line) => <p key={line}>{line}</p>)}
    </div>
  )
}

function Row({ name, worst, rating }: { name: string; worst: Answer<WorstCase>; rating: number | null }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>
        <Why answer={worst} />
        {rating !== null && <small> of {figure(rating, 'A')}</small>}
      </dd>
    </>
  )
}
