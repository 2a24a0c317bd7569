import { useRef, useState } from 'react'
import type { Book, Chapter, Piece } from '../../../engine'
import { CoverView } from './CoverView'
import { PieceView } from './PieceView'

/** The handover pack on screen: one column of large type that reflows. */
export function BookView({ book }: { book: Book }) {
  const root = useRef<HTMLElement>(null)
  const goTo = (number: number) => {
    const chapter = root.current?.querySelector<HTMLElement>(`[data-chapter="${number}"]`)
    const paper = root.current?.parentElement
    if (!chapter || !paper) return
    // By hand: scrollIntoView would shift the whole window too.
    paper.scrollTop += chapter.getBoundingClientRect().top - paper.getBoundingClientRect().top
    chapter.focus({ preventScroll: true })
  }
  return (
    <article className="book" lang={book.locale} ref={root}>
      <CoverView cover={book.cover} onGo={goTo} />
      {book.chapters.map((chapter) => (
        <ChapterView key={chapter.key} chapter={chapter} />
      ))}
    </article>
  )
}

function ChapterView({ chapter: { is, number, title, pieces, seek } }: { chapter: Chapter }) {
  const [sought, setSought] = useState('')
  const shown = sought.trim() === '' ? pieces : soughtFirst(pieces, sought)
  return (
    <section className={`chapter ${is}`} data-chapter={number ?? undefined} tabIndex={-1} aria-label={title}>
      {title !== '' && (
        <h2>
          {number !== null && <span className="number">{number}</span>} {title}
        </h2>
      )}
      {seek !== undefined && (
        <label className="seek">
          <span>{seek.label}</span>
          <input type="search" value={sought} onChange={(e) => setSought(e.target.value)} />
        </label>
      )}
      {seek && !shown.some((p) => p.is === 'find') && <p role="status">{seek.none}</p>}
      {shown.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a chapter is made anew as a whole
        <PieceView key={i} piece={piece} />
      ))}
    </section>
  )
}

/** Things that are sought, what these hang on with others, the rules for fuses; all else is left out. */
function soughtFirst(pieces: readonly Piece[], sought: string): readonly Piece[] {
  const finds = pieces.filter((p) => p.is === 'find')
  const found = finds.filter((p) => isSought(p, sought))
  const ahead = finds.filter((p) => !found.includes(p) && found.some((f) => p.shared?.includes(f.title)))
  return [...found, ...ahead, ...pieces.filter((p) => p.is === 'list')]
}

/** Every word that is sought stands in the name or the place of a thing. */
const isSought = ({ title, place }: Extract<Piece, { readonly is: 'find' }>, sought: string): boolean =>
  sought
    .toLowerCase()
    .split(/\s+/)
    .every((word) => `${title} ${place}`.toLowerCase().includes(word))
