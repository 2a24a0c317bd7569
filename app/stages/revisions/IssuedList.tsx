import { Download, Eye, Undo2 } from 'lucide-react'
import { type Design, issuedDesign, type Revision, standingOf, writeDesign } from '../../../engine'
import { download } from '../../files/disk'
import { fileName } from '../../files/session'
import { doEdit, useOpen } from '../../store/open'
import { say } from '../../store/say'
import { lookAlone } from './looking'
import { issuedKey } from './states'

/** Issued revisions, the newest first. */
export function IssuedList({ design, alone }: { design: Design; alone: string | null }) {
  const revisions = design.revisions ?? []
  if (revisions.length === 0) return null
  const standing = standingOf(design)
  const current = standing.is === 'issued' ? standing.revision.number : null
  return (
    <section className="issued" aria-label="Issued revisions">
      <h2>Issued</h2>
      <ol>
        {[...revisions].reverse().map((revision) => (
          <Issued
            key={revision.number}
            design={design}
            revision={revision}
            seen={alone === issuedKey(revision.number)}
            current={revision.number === current}
          />
        ))}
      </ol>
    </section>
  )
}

interface Props {
  readonly design: Design
  readonly revision: Revision
  /** It is what the page shows now. */
  readonly seen: boolean
  /** The design is just as it was issued. */
  readonly current: boolean
}

function Issued({ design, revision, seen, current }: Props) {
  const { number, date, by, reason } = revision
  const writing = useOpen((s) => s.hold === 'writing')
  const issued = issuedDesign(design, number)
  const takeBack = () => {
    if (doEdit(`Take back revision ${number}`, { do: 'take back', number }))
      say(`The design is again as in revision ${number}. Undo takes it back.`)
  }
  const save = (state: Design) =>
    download(
      fileName(design).replace(/\.json$/, `-rev-${number.replace(/[^\w-]/g, '_')}.json`),
      new Blob([writeDesign(state)], { type: 'application/json' }),
    )
  return (
    <li className={seen ? 'seen' : ''}>
      <p className="head">
        <b className="number">{number}</b>
        <span>
          {date}, {by}
        </span>
        {current && <span className="current">as it is now</span>}
      </p>
      <p>{reason}</p>
      {issued ? (
        <div className="buttons">
          <button
            type="button"
            className="plain"
            aria-pressed={seen}
            onClick={() => lookAlone(seen ? null : issuedKey(number))}
          >
            <Eye size={15} aria-hidden /> {seen ? 'Back to comparing' : 'Look at it'}
          </button>
          <button type="button" className="plain" onClick={() => save(issued)}>
            <Download size={15} aria-hidden /> Save
          </button>
          {!current && (
            <button type="button" className="plain" disabled={!writing} onClick={takeBack}>
              <Undo2 size={15} aria-hidden /> Take it back
            </button>
          )}
        </div>
      ) : (
        <p className="failure" role="alert">
          What is kept of it is not what was issued: the file was damaged or changed by hand. It is not used.
        </p>
      )}
    </li>
  )
}
