import { ArrowDown, ArrowUp, RotateCcw } from 'lucide-react'
import { PACK_SECTIONS, usualContents } from '../../../engine'
import { contentsOf, withContents } from './choice'
import { choose, useMaking } from './making'

const titleOf = (key: string): string => PACK_SECTIONS.find((s) => s.key === key)?.title ?? key

/** What the pack holds, in order: each can be taken out, put in, and moved up and down (Alt with an arrow key as well). */
export function ContentsList({ title }: { readonly title: string }) {
  const choice = useMaking((s) => s.choice)
  const counts = useMaking((s) => s.pack?.counts)
  const inside = contentsOf(choice)
  const outside = PACK_SECTIONS.map((s) => s.key).filter((key) => !inside.includes(key))
  const set = (keys: readonly string[], moved?: string) => {
    choose(withContents(choice, keys))
    // A line that went elsewhere takes the keyboard along.
    if (moved !== undefined) requestAnimationFrame(() => document.getElementById(`in-${moved}`)?.focus())
  }
  const move = (key: string, by: 1 | -1) => {
    const at = inside.indexOf(key)
    const keys = inside.filter((k) => k !== key)
    keys.splice(Math.max(0, at + by), 0, key)
    set(keys, key)
  }
  return (
    <div className="contents">
      <header>
        <h2>{title}</h2>
        {inside.join() !== usualContents(choice.reader).join() && (
          <button type="button" className="link" onClick={() => set(usualContents(choice.reader))}>
            <RotateCcw size={14} aria-hidden /> As usual
          </button>
        )}
      </header>
      <ol aria-label="In the pack">
        {inside.map((key, i) => (
          <li key={key}>
            <label htmlFor={`in-${key}`}>
              <input
                id={`in-${key}`}
                type="checkbox"
                checked
                onChange={() =>
                  set(
                    inside.filter((k) => k !== key),
                    key,
                  )
                }
                onKeyDown={(e) => {
                  if (!e.altKey || (e.key !== 'ArrowUp' && e.key !== 'ArrowDown')) return
                  e.preventDefault()
                  move(key, e.key === 'ArrowUp' ? -1 : 1)
                }}
              />
              <span>{titleOf(key)}</span>
            </label>
            <small>{counted(counts?.[key])}</small>
            <button
              type="button"
              className="icon"
              aria-label={`${titleOf(key)}: further up`}
              title="Further up (Alt ↑)"
              disabled={i === 0}
              onClick={() => move(key, -1)}
            >
              <ArrowUp size={14} aria-hidden />
            </button>
            <button
              type="button"
              className="icon"
              aria-label={`${titleOf(key)}: further down`}
              title="Further down (Alt ↓)"
              disabled={i === inside.length - 1}
              onClick={() => move(key, 1)}
            >
              <ArrowDown size={14} aria-hidden />
            </button>
          </li>
        ))}
      </ol>
      {outside.length > 0 && (
        <>
          <h3>Not in it</h3>
          <ul aria-label="Not in the pack">
            {outside.map((key) => (
              <li key={key}>
                <label htmlFor={`in-${key}`}>
                  <input
                    id={`in-${key}`}
                    type="checkbox"
                    checked={false}
                    onChange={() => set([...inside, key], key)}
                  />
                  <span>{titleOf(key)}</span>
                </label>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

/** A section without sheets has nothing to say in this design. */
const counted = (count: number | undefined): string =>
  count === undefined ? '' : count === 0 ? 'none' : `${count} p.`
