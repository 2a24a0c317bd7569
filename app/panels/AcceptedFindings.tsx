import { useEffect, useState } from 'react'
import type { AcceptedFinding } from '../../engine'
import { LEVELS } from '../store/tally'
import { FindingRow } from './FindingRow'

interface Props {
  readonly accepted: readonly AcceptedFinding[]
  readonly shown: string | null
}

/** What somebody lets stand, with the reason: folded away, but counted, and printed in full. */
export function AcceptedFindings({ accepted, shown }: Props) {
  const [open, setOpen] = useState(false)
  const here = accepted.some(({ finding }) => finding.key === shown)
  useEffect(() => {
    if (here) setOpen(true)
  }, [here])
  const sorted = LEVELS.flatMap((level) => accepted.filter(({ finding }) => finding.level === level))
  return (
    <details className="accepted" open={open} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        Accepted with a reason <b>{accepted.length}</b>
      </summary>
      <ol>
        {sorted.map(({ finding, accepted: by }) => (
          <FindingRow key={finding.key} finding={finding} accepted={by} shown={shown === finding.key} />
        ))}
      </ol>
    </details>
  )
}
