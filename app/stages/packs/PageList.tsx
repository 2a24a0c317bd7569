import { useEffect, useRef } from 'react'
import type { Bookmark } from '../../../engine'
import { turnTo, useMaking } from './making'

/** Every page of the pack by its bookmark; the one in sight is marked. */
export function PageList() {
  const bookmarks = useMaking((s) => s.pack?.bookmarks)
  const page = useMaking((s) => s.page)
  const list = useRef<HTMLElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the page in sight has changed
  useEffect(() => {
    list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' })
  }, [page, bookmarks])
  return (
    <nav className="page-list" aria-label="Pages" ref={list}>
      {bookmarks?.map((b) => (
        <Line key={`${b.page} ${b.title}`} bookmark={b} at={lineAt(bookmarks, page)} />
      ))}
    </nav>
  )
}

/** First page of the line that a page belongs to: sheets that are called alike share one. */
const lineAt = (bookmarks: readonly Bookmark[], page: number): number =>
  Math.max(-1, ...bookmarks.flatMap((b) => [b.page, ...b.under.map((u) => u.page)]).filter((p) => p <= page))

function Line({ bookmark, at }: { readonly bookmark: Bookmark; readonly at: number }) {
  const { title, under } = bookmark
  const alone = under.length === 0
  const here = alone && bookmark.page === at
  return (
    <>
      <button
        type="button"
        className={alone ? 'section' : 'section many'}
        aria-current={here ? 'page' : undefined}
        onClick={() => turnTo(bookmark.page)}
      >
        <span>{title}</span>
        <small>{bookmark.page + 1}</small>
      </button>
      {under.map((u) => (
        <button
          key={u.page}
          type="button"
          aria-current={u.page === at ? 'page' : undefined}
          onClick={() => turnTo(u.page)}
        >
          <span>{u.title}</span>
          <small>{u.page + 1}</small>
        </button>
      ))}
    </>
  )
}
