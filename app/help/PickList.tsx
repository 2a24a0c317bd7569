import { type ReactNode, useEffect, useId, useRef, useState } from 'react'

export interface Choice {
  readonly key: string
  readonly left: string
  readonly text: string
  readonly right?: string
  /** Shown in place of the left text. */
  readonly picture?: ReactNode
}

interface Props {
  readonly label: string
  readonly placeholder: string
  readonly choices: (typed: string) => readonly Choice[]
  readonly onPick: (key: string) => void
  readonly none: string
  /** Choices shown at once. */
  readonly most?: number
}

const MOST = 60

/** Type, choose with the arrows, Enter. The one list for placing, finding and joining. */
export function PickList({ label, placeholder, choices, onPick, none, most = MOST }: Props) {
  const [typed, setTyped] = useState('')
  const [at, setAt] = useState(0)
  const id = useId()
  const list = useRef<HTMLDivElement>(null)
  const shown = choices(typed).slice(0, most)
  const here = Math.min(at, Math.max(0, shown.length - 1))
  // biome-ignore lint/correctness/useExhaustiveDependencies: scrolls when the mark moves
  useEffect(() => {
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' })
  }, [here, typed])

  const onKeyDown = (e: React.KeyboardEvent) => {
    const step = e.key === 'ArrowDown' ? 1 : e.key === 'ArrowUp' ? -1 : 0
    if (step) {
      e.preventDefault()
      setAt((here + step + shown.length) % Math.max(1, shown.length))
    } else if (e.key === 'Enter') {
      e.preventDefault()
      const choice = shown[here]
      if (choice) onPick(choice.key)
    }
  }
  return (
    <>
      <input
        // biome-ignore lint/a11y/noAutofocus: the list is opened to be typed into
        autoFocus
        role="combobox"
        aria-label={label}
        aria-expanded
        aria-controls={id}
        aria-activedescendant={shown[here] ? `${id}-${here}` : undefined}
        placeholder={placeholder}
        value={typed}
        autoComplete="off"
        onChange={(e) => {
          setTyped(e.target.value)
          setAt(0)
        }}
        onKeyDown={onKeyDown}
      />
      <div ref={list} id={id} role="listbox" aria-label={label} className="pick-list">
        {shown.map((choice, i) => (
          // biome-ignore lint/a11y/useKeyWithClickEvents: keys are handled in the field above
          // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus
          <div
            key={choice.key}
            id={`${id}-${i}`}
            role="option"
            aria-selected={i === here}
            onPointerMove={() => setAt(i)}
            onClick={() => onPick(choice.key)}
          >
            {choice.picture ?? <b>{choice.left}</b>}
            <span>{choice.text}</span>
            <small>{choice.right}</small>
          </div>
        ))}
      </div>
      {shown.length === 0 && <p className="quiet">{none}</p>}
    </>
  )
}
