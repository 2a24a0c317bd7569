import { Wrench } from 'lucide-react'
import { useState } from 'react'
import type { Finding } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { say } from '../store/say'
import { changesOf } from './changes'

/** The fix of a finding, where one is certain, with a look at it first. */
export function Mend({ finding: { fix } }: { finding: Finding }) {
  const design = useOpen((s) => s.design)
  const writing = useOpen((s) => s.hold === 'writing')
  const [preview, setPreview] = useState(false)
  if (!fix) return null
  if (!preview)
    return (
      <button type="button" className="plain" disabled={!writing} onClick={() => setPreview(true)}>
        <Wrench size={14} aria-hidden /> Mend: {fix.title}
      </button>
    )
  const mend = () => {
    if (doEdit(fix.title, fix.edit)) say(`${fix.title}: done. Undo takes it back.`)
  }
  return (
    <fieldset className="preview" aria-label="What mending would do">
      <p>{fix.title}. One undo step takes it back.</p>
      <ul className="changes">
        {changesOf(fix.edit, design).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <button type="button" className="main" onClick={mend}>
        Do it
      </button>
      <button type="button" className="plain" onClick={() => setPreview(false)}>
        Leave it
      </button>
    </fieldset>
  )
}
