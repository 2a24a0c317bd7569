import { conductorsAt, type Part, terminalsOf } from '../../engine'
import { useOpen } from '../store/open'
import { select } from '../store/view'

/** The terminals of a part, and what is joined to each. */
export function TerminalList({ part }: { part: Part }) {
  const design = useOpen((s) => s.design)
  return (
    <div className="terminals">
      <h3>Terminals</h3>
      <ul>
        {terminalsOf(part, design.conductors).map((t) => {
          const joined = conductorsAt(design, part.id, t.key)
          return (
            <li key={t.key}>
              <span className="mark">{t.mark || t.key}</span>
              <span className="name">
                {t.name}
                {t.stud && <small> {t.stud}</small>}
              </span>
              <span className="joined">
                {joined.map((c) => (
                  <button key={c.id} type="button" className="link" onClick={() => select([], [c.id])}>
                    {c.number}
                  </button>
                ))}
                {joined.length === 0 && <i>free</i>}
              </span>
            </li>
          )
        })}
      </ul>
    </div>
  )
}
