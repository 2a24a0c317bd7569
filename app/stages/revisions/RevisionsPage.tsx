import '../../theme/comparedrawings.css'
import '../../theme/comparing.css'
import '../../theme/revisions.css'
import { useEffect } from 'react'
import { standingWords } from '../../../engine'
import { useOpen } from '../../store/open'
import { Comparing } from './Comparing'
import { IssuedList } from './IssuedList'
import { IssueForm } from './IssueForm'
import { lookAtDesign, useLooking } from './looking'
import { statesOf } from './states'

/** Issues revisions, looks at issued ones, and compares any two states. */
export default function RevisionsPage() {
  const design = useOpen((s) => s.design)
  const alone = useLooking((s) => s.alone)
  useEffect(() => lookAtDesign(design.id), [design.id])
  const { revision, status, issued } = standingWords(design)
  return (
    <main className="page revisions">
      <aside>
        <p className={`stands${issued ? '' : ' open'}`}>
          <b>{revision || 'No number yet'}</b>
          <span>{status}</span>
        </p>
        <IssueForm key={`${design.id} ${design.revisions?.length ?? 0}`} design={design} />
        <IssuedList design={design} alone={alone} />
      </aside>
      {statesOf(design).length > 1 ? (
        <Comparing design={design} />
      ) : (
        <div className="none">
          <h2>Nothing has been issued yet</h2>
          <p>
            Issue the design when you give it to the workshop or the customer. That state is then kept as it
            was, and every print says which revision it is.
          </p>
          <p>
            What you change afterwards is told apart from it: on this page as a list and on the drawing, on
            paper by clouds, and in the title block, so that nobody builds from a print that was not issued.
          </p>
        </div>
      )}
    </main>
  )
}
