import { Stamp } from 'lucide-react'
import { useId, useMemo, useState } from 'react'
import { type Design, LEVEL_WORDS, nextRevision, sortAccepted, standingOf } from '../../../engine'
import { PrintedDate } from '../../panels/PrintedDate'
import { useLatest } from '../../store/latest'
import { doEdit, useOpen } from '../../store/open'
import { say } from '../../store/say'

/** Today where the person is, ISO 8601. */
const today = (): string => {
  const now = new Date()
  const two = (n: number): string => String(n).padStart(2, '0')
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`
}

/** Number, date, name and reason; then the design is given out as it is. */
export function IssueForm({ design }: { design: Design }) {
  const writing = useOpen((s) => s.hold === 'writing')
  const nothingNew = useMemo(() => standingOf(design).is === 'issued', [design])
  const [typed, setTyped] = useState<{ number?: string; date?: string; by?: string; reason?: string }>({})
  const words = {
    number: typed.number ?? nextRevision(design),
    date: typed.date ?? today(),
    by: typed.by ?? design.revisions?.at(-1)?.by ?? design.settings.designer,
    reason: typed.reason ?? '',
  }
  const open = (Object.keys(LABELS) as (keyof typeof LABELS)[])
    .filter((key) => words[key].trim() === '')
    .map((key) => LABELS[key].toLowerCase())
  const issue = () => {
    if (!doEdit(`Issue revision ${words.number}`, { do: 'issue', ...words })) return
    setTyped({})
    say(`Revision ${words.number} is issued.`)
  }
  const field = (key: keyof typeof LABELS, type = 'text') => (
    <Line
      key={key}
      label={LABELS[key]}
      type={type}
      value={words[key]}
      disabled={!writing || nothingNew}
      onChange={(value) => setTyped((t) => ({ ...t, [key]: value }))}
    />
  )
  return (
    <form
      className="issue"
      aria-label="Issue a revision"
      onSubmit={(e) => {
        e.preventDefault()
        issue()
      }}
    >
      <h2>Issue a revision</h2>
      {nothingNew ? (
        <p className="quiet">
          Nothing has changed since the last one. The next can be issued after a change.
        </p>
      ) : (
        <>
          <p className="quiet">The design is kept as it is now, and never changed afterwards.</p>
          <div className="pair">
            {field('number')}
            {field('date', 'date')}
          </div>
          {field('by')}
          {field('reason')}
          <OpenFindings design={design} />
          <button type="submit" className="main" disabled={!writing || open.length > 0}>
            <Stamp size={16} aria-hidden /> Issue revision {words.number}
          </button>
          {open.length > 0 && <p className="quiet">Still to be filled in: {open.join(', ')}.</p>}
        </>
      )}
    </form>
  )
}

const LABELS = {
  number: 'Number or letter',
  date: 'Date',
  by: 'Issued by',
  reason: 'Reason, printed',
}

interface LineProps {
  readonly label: string
  readonly type: string
  readonly value: string
  readonly disabled: boolean
  readonly onChange: (value: string) => void
}

function Line({ label, type, value, disabled, onChange }: LineProps) {
  const id = useId()
  return (
    <label className="line" htmlFor={id}>
      <span>{label}</span>
      <input
        id={id}
        type={type}
        value={value}
        disabled={disabled}
        onChange={(e) => onChange(e.target.value)}
      />
      {type === 'date' && <PrintedDate date={value} />}
    </label>
  )
}

const counted = (level: 'danger' | 'warning' | 'not-checked', count: number): string => {
  const word = LEVEL_WORDS[level].toLowerCase()
  return `${count} ${word}${count === 1 || level === 'not-checked' ? '' : 's'}`
}

/** What still stands open does not hinder the issue; it is said. */
function OpenFindings({ design }: { design: Design }) {
  const { findings, checked } = useLatest()
  const counts = useMemo(() => {
    const { open } = sortAccepted(design, findings)
    return (['danger', 'warning', 'not-checked'] as const)
      .map((level) => [level, open.filter((f) => f.level === level).length] as const)
      .filter(([, count]) => count > 0)
      .map(([level, count]) => counted(level, count))
  }, [design, findings])
  if (checked !== design) return <p className="quiet">The checks are being made…</p>
  if (counts.length === 0) return null
  return <p className="open-findings">Open findings go out with it: {counts.join(', ')}.</p>
}
