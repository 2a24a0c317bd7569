import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react'
import { maker, useMaking } from './making'
import { PreviewBar } from './PreviewBar'
import { usePageKeys } from './pagekeys'
import { scaleOf, shownWidth, stepped, type Zoom } from './zoom'

const EDGE = 32

/** The page as it will lie on the table: the very sheet of the PDF, drawn as SVG. */
export function Preview() {
  const pack = useMaking((s) => s.pack)
  const page = useMaking((s) => s.page)
  const making = useMaking((s) => s.work.is === 'making')
  const svg = useSheet()
  const [zoom, setZoom] = useState<Zoom>('whole')
  const [room, setRoom] = useState({ w: 800, h: 600 })
  const box = useRef<HTMLElement>(null)
  useLayoutEffect(() => {
    const watched = box.current
    if (!watched) return
    const measure = () => setRoom({ w: watched.clientWidth - EDGE, h: watched.clientHeight - EDGE })
    const observer = new ResizeObserver(measure)
    observer.observe(watched)
    measure()
    return () => observer.disconnect()
  }, [])
  const size = pack?.pages[page]
  const scale = size ? scaleOf(zoom, size, room) : 1
  usePageKeys(useCallback((by) => setZoom(by === 0 ? 'whole' : stepped(scale, by)), [scale]))
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page begins at its top
  useEffect(() => {
    box.current?.scrollTo(0, 0)
  }, [page])
  return (
    <section className="preview" aria-label="Preview">
      <PreviewBar zoom={zoom} scale={scale} onZoom={setZoom} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard has to reach it */}
      <section className="paper-room" ref={box} tabIndex={0} aria-label={`Page ${page + 1}`}>
        {size && svg !== null ? (
          <div
            className={making ? 'paper-sheet old' : 'paper-sheet'}
            style={{ width: shownWidth(size, scale), aspectRatio: `${size.w} / ${size.h}` }}
            // biome-ignore lint/security/noDangerouslySetInnerHtml: made by our own painter, every word of it escaped
            dangerouslySetInnerHTML={{ __html: svg }}
          />
        ) : (
          <p className="quiet">
            {making ? 'The first page comes in a moment.' : 'There is no page to look at.'}
          </p>
        )}
      </section>
    </section>
  )
}

/** The page in sight as SVG; the one before stays until it has come. */
function useSheet(): string | null {
  const pack = useMaking((s) => s.pack)
  const page = useMaking((s) => s.page)
  const [svg, setSvg] = useState<string | null>(null)
  useEffect(() => {
    let wanted = true
    if (!pack) setSvg(null)
    else
      maker.sheet(page).then(
        (text) => wanted && setSvg(text),
        // Stopped, or a newer pack is on its way: its pages follow.
        () => {},
      )
    return () => {
      wanted = false
    }
  }, [pack, page])
  return svg
}
