import { Check } from 'lucide-react'
import { useState } from 'react'
import { type Finding, LEVEL_WORDS, sentence } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { say } from '../store/say'

/** Lets a finding stand, for a reason in writing; it moves to its own group and is printed with the reason. */
export function AcceptForm({ finding }: { finding: Finding }) {
  const design = useOpen((s) => s.design)
  const writing = useOpen((s) => s.hold === 'writing')
  const [open, setOpen] = useState(false)
  const [reason, setReason] = useState('')
  const [by, setBy] = useState(design.settings.designer)
  if (!open)
    return (
      <button type="button" className="plain" disabled={!writing} onClick={() => setOpen(true)}>
        <Check size={14} aria-hidden /> Accept with a reason…
      </button>
    )
  const accept = () => {
    const date = new Date().toISOString().slice(0, 10)
    const name = by.trim()
    const accepted = {
      key: finding.key,
      level: finding.level,
      ...(finding.actual ? { actual: finding.actual.value } : {}),
      reason,
      ...(name ? { by: name } : {}),
      date,
    }
    const { title } = sentence(finding, design)
    if (doEdit(`Accept "${title}"`, { do: 'accept', accepted }))
      say(`Accepted: ${title}. Undo takes it back.`)
  }
  return (
    <fieldset className="accept" aria-label="Accept this finding">
      {finding.level === 'danger' && (
        <p>
          <b>{LEVEL_WORDS.danger}.</b> Accepting mends nothing: it stays on every print, with your reason.
        </p>
      )}
      <label>
        Reason, in writing
        <textarea
          // biome-ignore lint/a11y/noAutofocus: it was opened to be written into
          autoFocus
          rows={3}
          maxLength={2000}
          value={reason}
          onChange={(e) => setReason(e.target.value)}
        />
      </label>
      <label>
        By
        <input maxLength={200} value={by} onChange={(e) => setBy(e.target.value)} />
      </label>
      <button type="button" className="main" disabled={reason.trim() === ''} onClick={accept}>
        Accept
      </button>
      <button type="button" className="plain" onClick={() => setOpen(false)}>
        Leave it open
      </button>
    </fieldset>
  )
}
