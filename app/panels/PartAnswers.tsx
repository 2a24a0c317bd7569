import { type Part, readingErrorWords } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { BranchRow } from './BranchRow'
import { DropRow } from './DropRow'
import { Why } from './Why'

/** What was computed for a part: the worst case in each of its branches, its bar, its shunt, its voltage drop. */
export function PartAnswers({ part }: { part: Part }) {
  const answers = useLatest((s) => s.answers)
  const design = useOpen((s) => s.design)
  if (!answers) return null
  const branches = [...answers.branches.values()].filter((b) => b.part === part.id)
  const drops = [...answers.drops.values()].filter((d) => d.part === part.id)
  const bar = answers.bars.get(part.id)
  const shunt = answers.shunts.get(part.id)
  if (!branches.length && !drops.length && !bar && !shunt) return null
  return (
    <div className="answers">
      <dl>
        {branches.map((b) => (
          <BranchRow key={b.key} branch={b} alone={branches.length === 1} />
        ))}
        {bar && (
          <>
            <dt>Worst case, bar</dt>
            <dd>
              <Why answer={bar} />
            </dd>
          </>
        )}
        {drops.map((d) => (
          <DropRow key={d.device} drop={d} />
        ))}
      </dl>
      {shunt && readingErrorWords(shunt, design).map((line) => <p key={line}>{line}</p>)}
    </div>
  )
}
