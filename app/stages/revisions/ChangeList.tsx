import { useEffect, useRef } from 'react'
import { CHANGE_GROUPS, CHANGE_MARKS, CHANGE_WORDS, type ChangeRow } from '../../../engine'
import { useOpen } from '../../store/open'
import { showOnDrawing } from '../goto'
import { pickRow } from './looking'

/** Everything that differs, group by group; the picked row is shown on the drawings. */
export function ChangeList({ rows, picked }: { rows: readonly ChangeRow[]; picked: string | null }) {
  const at = useRef<HTMLLIElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: another row comes into sight
  useEffect(() => {
    at.current?.scrollIntoView({ block: 'nearest' })
  }, [picked])
  if (rows.length === 0) return <p className="quiet">Nothing differs between these two.</p>
  return Object.entries(CHANGE_GROUPS).map(([group, title]) => {
    const own = rows.filter((r) => r.group === group)
    if (own.length === 0) return null
    return (
      <section key={group} aria-label={title}>
        <h3>
          {title} <span className="count">{own.length}</span>
        </h3>
        <ul>
          {own.map((row) => (
            <li key={row.key} ref={row.key === picked ? at : null} className={row.what}>
              <button
                type="button"
                aria-pressed={row.key === picked}
                onClick={() => pickRow(row.key === picked ? null : row.key)}
              >
                <span className="mark" aria-hidden>
                  {CHANGE_MARKS[row.what]}
                </span>
                <span className="words">
                  <b>
                    <span className="unseen">{CHANGE_WORDS[row.what]}: </span>
                    {row.name}
                  </b>
                  {row.lines.map((line) => (
                    <span key={line}>{line}</span>
                  ))}
                </span>
              </button>
              {row.key === picked && <ToDrawing row={row} />}
            </li>
          ))}
        </ul>
      </section>
    )
  })
}

/** Only what is still on the table can be gone to. */
function ToDrawing({ row }: { row: ChangeRow }) {
  const design = useOpen((s) => s.design)
  const parts = row.parts.filter((id) => design.parts.some((p) => p.id === id))
  const conductors = row.conductors.filter((id) => design.conductors.some((c) => c.id === id))
  if (parts.length + conductors.length === 0) return null
  return (
    <button type="button" className="link" onClick={() => showOnDrawing({ parts, conductors })}>
      Go to it on the drawing
    </button>
  )
}
