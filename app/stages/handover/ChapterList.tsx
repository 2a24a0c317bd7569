import { Plus } from 'lucide-react'
import { useCallback, useState } from 'react'
import { CHAPTERS, type Design, handoverWords, newParagraph } from '../../../engine'
import { doEdit } from '../../store/open'
import { placed } from './order'
import { ParagraphForm } from './ParagraphForm'

/** Chapters in their order, each shown or left out, with own paragraphs where they stand. */
export function ChapterList({ design, disabled }: { design: Design; disabled: boolean }) {
  const { hidden = [], paragraphs = [] } = design.handover ?? {}
  const words = handoverWords(design.handover?.language)
  const toggle = (key: string, title: string) => {
    const leaves = !hidden.includes(key)
    doEdit(`${leaves ? 'Leave out' : 'Take in'} "${title}"`, {
      do: 'handover',
      set: { hidden: leaves ? [...hidden, key] : hidden.filter((k) => k !== key) },
    })
  }
  const [added, setAdded] = useState<string | null>(null)
  const forget = useCallback(() => setAdded(null), [])
  const add = (after: string | null) => {
    const paragraph = newParagraph(design, after)
    doEdit('Add a paragraph', { do: 'handover', set: { paragraphs: [...paragraphs, paragraph] } })
    setAdded(paragraph.id)
  }
  const own = (after: string | null) =>
    placed(paragraphs, after).map((p) => (
      <li key={p.id}>
        <ParagraphForm
          paragraph={p}
          paragraphs={paragraphs}
          disabled={disabled}
          isNew={p.id === added}
          onShown={forget}
        />
      </li>
    ))
  const adder = (after: string | null, where: string) => (
    <button
      type="button"
      className="icon add"
      aria-label={`Add a paragraph ${where}`}
      title={`Add a paragraph ${where}`}
      disabled={disabled}
      onClick={() => add(after)}
    >
      <Plus size={16} aria-hidden />
    </button>
  )
  return (
    <section aria-label="Chapters">
      <h3>Chapters</h3>
      <p className="quiet">Untick what this customer does not need. + puts a paragraph of your own below.</p>
      <ol className="chapters">
        <li className="chapter">
          <span className="front">Front page</span>
          {adder(null, 'before the first chapter')}
        </li>
        {own(null)}
        {CHAPTERS.flatMap((key) => [
          <li key={key} className="chapter">
            <label>
              <input
                type="checkbox"
                checked={!hidden.includes(key)}
                disabled={disabled}
                onChange={() => toggle(key, words.chapters[key].title)}
              />
              <span lang={words.locale}>{words.chapters[key].title}</span>
            </label>
            {adder(key, `after "${words.chapters[key].title}"`)}
          </li>,
          ...own(key),
        ])}
      </ol>
    </section>
  )
}
