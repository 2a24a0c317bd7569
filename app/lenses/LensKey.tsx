import { X } from 'lucide-react'
import { useLatest } from '../store/latest'
import { turnLens, useView } from '../store/view'
import { LookLine } from './LookLine'
import { LENSES } from './lens'

/** A small key in the corner of the sheet: what the lens shows, and what each line means. */
export function LensKey() {
  const lens = useView((s) => s.lens)
  const known = useLatest((s) => s.answers !== null)
  if (!lens) return null
  const { title, says, looks } = LENSES[lens]
  return (
    <section className="lens-key" aria-label={`Key: ${title}`}>
      <button type="button" className="icon" aria-label="Take the lens off" onClick={() => turnLens(lens)}>
        <X size={16} aria-hidden />
      </button>
      <details open>
        <summary>{title}</summary>
        <p>{known ? says : 'Nothing is worked out yet.'}</p>
        <ul>
          {looks.map((look) => (
            <li key={look.words}>
              <svg viewBox="0 0 10 3" width="40" height="12" aria-hidden>
                <g className="run painted">
                  <LookLine look={look} d="M0.2 1.5H9.8" />
                </g>
              </svg>
              {look.words}
            </li>
          ))}
        </ul>
      </details>
    </section>
  )
}
