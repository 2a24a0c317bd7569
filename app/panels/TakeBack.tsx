import { Undo2 } from 'lucide-react'
import { type Accepted, acceptedWords } from '../../engine'
import { doEdit, useOpen } from '../store/open'

/** Why a finding stands, and the way to open it again. */
export function TakeBack({ accepted }: { accepted: Accepted }) {
  const writing = useOpen((s) => s.hold === 'writing')
  return (
    <>
      <p className="reason">{acceptedWords(accepted)}</p>
      <button
        type="button"
        className="plain"
        disabled={!writing}
        onClick={() => doEdit('Open a finding again', { do: 'unaccept', key: accepted.key })}
      >
        <Undo2 size={14} aria-hidden /> Accept it no longer
      </button>
    </>
  )
}
