import { ChevronLeft, ChevronRight, Minus, Plus } from 'lucide-react'
import type { Bookmark } from '../../../engine'
import { turnTo, useMaking } from './making'
import { stepped, type Zoom } from './zoom'

interface Props {
  readonly zoom: Zoom
  readonly scale: number
  readonly onZoom: (zoom: Zoom) => void
}

/** Pages and zoom of the preview. */
export function PreviewBar({ zoom, scale, onZoom }: Props) {
  const pages = useMaking((s) => s.pack?.pages.length ?? 0)
  const bookmarks = useMaking((s) => s.pack?.bookmarks ?? NONE)
  const page = useMaking((s) => s.page)
  const off = pages === 0
  return (
    <header className="preview-bar">
      <button
        type="button"
        className="icon"
        aria-label="Page before"
        title="Page before (←)"
        disabled={off || page === 0}
        onClick={() => turnTo(page - 1)}
      >
        <ChevronLeft size={18} aria-hidden />
      </button>
      <span className="where" role="status">
        {off ? 'No page' : `Page ${page + 1} / ${pages}`}
      </span>
      <button
        type="button"
        className="icon"
        aria-label="Next page"
        title="Next page (→)"
        disabled={off || page >= pages - 1}
        onClick={() => turnTo(page + 1)}
      >
        <ChevronRight size={18} aria-hidden />
      </button>
      <select
        className="go"
        aria-label="Go to"
        value={sectionAt(bookmarks, page)}
        disabled={off}
        onChange={(e) => turnTo(Number(e.target.value))}
      >
        {bookmarks.map((b) => (
          <option key={`${b.page} ${b.title}`} value={b.page}>
            {b.title}
          </option>
        ))}
      </select>
      <span className="grow" />
      <button
        type="button"
        className="icon"
        aria-label="Smaller"
        title="Smaller (−)"
        disabled={off}
        onClick={() => onZoom(stepped(scale, -1))}
      >
        <Minus size={18} aria-hidden />
      </button>
      <span className="scale">{Math.round(scale * 100)} %</span>
      <button
        type="button"
        className="icon"
        aria-label="Larger"
        title="Larger (+)"
        disabled={off}
        onClick={() => onZoom(stepped(scale, 1))}
      >
        <Plus size={18} aria-hidden />
      </button>
      {SHOWN.map(([value, text]) => (
        <button
          key={text}
          type="button"
          className="fit"
          aria-pressed={zoom === value}
          disabled={off}
          onClick={() => onZoom(value)}
        >
          {text}
        </button>
      ))}
    </header>
  )
}

const NONE: readonly Bookmark[] = []
const SHOWN = [
  ['whole', 'Whole page'],
  ['width', 'Page width'],
  [1, 'Real size'],
] as const

/** First page of the section that a page stands in. */
const sectionAt = (bookmarks: readonly Bookmark[], page: number): number =>
  bookmarks.findLast((b) => b.page <= page)?.page ?? 0
