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
      {seek && !pieces.some((p) => isSought(p, sought)) && <p role="status">{seek.none}</p>}
      {shown.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a chapter is made anew as a whole
        <PieceView key={i} piece={piece} />
      ))}
    </section>
  )
}

/** Things that are sought before what several hang on and all else that is said; other things are left out. */
const soughtFirst = (pieces: readonly Piece[], sought: string): readonly Piece[] => [
  ...pieces.filter((p) => isSought(p, sought)),
  ...pieces.filter((p) => (p.is === 'find' ? p.shared && !isSought(p, sought) : p.is !== 'heading')),
]

/** Every word that is sought stands in the name or the place of a thing. */
const isSought = (piece: Piece, sought: string): boolean =>
  piece.is === 'find' &&
  sought
    .toLowerCase()
    .split(/\s+/)
    .every((word) => `${piece.title} ${piece.place}`.toLowerCase().includes(word))
