import { ArrowDown, ArrowUp, X } from 'lucide-react'
import { useEffect, useRef } from 'react'
import { CHAPTERS, movedParagraph, type OwnParagraph } from '../../../engine'
import { TextInput } from '../../panels/TextInput'
import { doEdit } from '../../store/open'

interface Props {
  readonly paragraph: OwnParagraph
  readonly paragraphs: readonly OwnParagraph[]
  readonly disabled: boolean
  /** Just added: the keys go to its heading, once. */
  readonly isNew: boolean
  readonly onShown: () => void
}

/** An own paragraph: heading, text, and its place among the chapters. */
export function ParagraphForm({ paragraph, paragraphs, disabled, isNew, onShown }: Props) {
  const form = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (!isNew) return
    form.current?.querySelector('input')?.focus()
    onShown()
  }, [isNew, onShown])
  const { id, heading, text } = paragraph
  const called = heading.trim() === '' ? 'paragraph' : `"${heading.trim()}"`
  const set = (what: string, next: readonly OwnParagraph[]) =>
    doEdit(what, { do: 'handover', set: { paragraphs: next } })
  const change = (words: Partial<OwnParagraph>) =>
    set(
      `Change ${called}`,
      paragraphs.map((p) => (p.id === id ? { ...p, ...words } : p)),
    )
  const up = movedParagraph(paragraphs, id, -1, CHAPTERS)
  const down = movedParagraph(paragraphs, id, 1, CHAPTERS)
  const buttons = [
    { label: `Move ${called} up`, icon: ArrowUp, next: up },
    { label: `Move ${called} down`, icon: ArrowDown, next: down },
    { label: `Delete ${called}`, icon: X, next: paragraphs.filter((p) => p.id !== id) },
  ]
  return (
    <div className="own" ref={form}>
      <div className="top">
        <TextInput
          label="Heading of your paragraph"
          placeholder="Heading"
          value={heading}
          disabled={disabled}
          onChange={(words) => change({ heading: words })}
        />
        {buttons.map(({ label, icon: Icon, next }) => (
          <button
            key={label}
            type="button"
            className="icon"
            aria-label={label}
            title={label}
            disabled={disabled || next === paragraphs}
            onClick={() => set(label, next)}
          >
            <Icon size={16} aria-hidden />
          </button>
        ))}
      </div>
      <TextInput
        label="Your paragraph"
        placeholder="Your own words. An empty line begins a new paragraph."
        lines={4}
        value={text}
        disabled={disabled}
        onChange={(words) => change({ text: words })}
      />
    </div>
  )
}
