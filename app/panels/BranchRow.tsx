import { type BranchAnswer, figure } from '../../engine'
import { Why } from './Why'

/** Worst case of one branch inside a part, against its rating. */
export function BranchRow({ branch, alone }: { branch: BranchAnswer; alone: boolean }) {
  return (
    <>
      <dt>{alone ? 'Worst case' : `Worst case, ${branch.key}`}</dt>
      <dd>
        <Why
          answer={branch.worst}
          beside={branch.ratingA === null ? 'rating not known' : `of ${figure(branch.ratingA, 'A')}`}
        />
      </dd>
    </>
  )
}
