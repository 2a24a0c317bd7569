import { Popover } from 'radix-ui'
import { type RefObject, useEffect, useRef, useState } from 'react'
import { useOpen } from '../../store/open'
import { endRound, goTo, useRound } from './round'
import { STOPS } from './stops'

type Place = Pick<DOMRect, 'left' | 'top' | 'width' | 'height'>

/** A look round the table, stop by stop; nothing happens that cannot be undone, and Esc ends it. */
export function Round() {
  const at = useRound((s) => s.at)
  if (at === null) return null
  return at === 'offered' ? <Offer /> : <AtStop key={at} at={at} />
}

function Offer() {
  const design = useOpen((s) => s.design.id)
  const offered = useRef(design)
  if (design !== offered.current) return null
  return (
    <section className="round-offer" aria-label="A look round">
      <p>New here? A look round this demo takes two minutes.</p>
      <button type="button" className="main" onClick={() => goTo(0)}>
        Show me round
      </button>
      <button type="button" className="plain" onClick={endRound}>
        Not now
      </button>
      <small>It is always under Keys, at the top right.</small>
    </section>
  )
}

function AtStop({ at }: { at: number }) {
  const stop = STOPS[at]!
  const place = usePlace(stop.points)
  const anchor = useRef({ getBoundingClientRect: () => new DOMRect() })
  if (!place) return null
  anchor.current.getBoundingClientRect = () => new DOMRect(place.left, place.top, place.width, place.height)
  const last = at === STOPS.length - 1
  return (
    <Popover.Root open>
      <Popover.Anchor virtualRef={anchor as RefObject<{ getBoundingClientRect(): DOMRect }>} />
      <div
        className="round-ring"
        aria-hidden
        style={{ left: place.left, top: place.top, width: place.width, height: place.height }}
      />
      <Popover.Portal>
        <Popover.Content
          className="round-stop"
          aria-label={stop.title}
          side={sideOf(place)}
          align="start"
          sideOffset={10}
          collisionPadding={12}
          onEscapeKeyDown={endRound}
          onInteractOutside={(e) => e.preventDefault()}
        >
          <small>
            {at + 1} of {STOPS.length}
          </small>
          <h2>{stop.title}</h2>
          <p>{stop.text}</p>
          <div className="buttons">
            <button type="button" className="main" onClick={() => goTo(at + 1)}>
              {last ? 'Begin' : 'Next'}
            </button>
            {at > 0 && (
              <button type="button" className="plain" onClick={() => goTo(at - 1)}>
                Back
              </button>
            )}
            {!last && (
              <button type="button" className="link" onClick={endRound}>
                Enough
              </button>
            )}
          </div>
          <Popover.Arrow className="round-arrow" width={14} height={7} />
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  )
}

/** Beside what is tall, below what is not. */
function sideOf({ left, width, height }: Place): 'bottom' | 'left' | 'right' {
  if (height < 120) return 'bottom'
  return left + width / 2 > window.innerWidth / 2 ? 'left' : 'right'
}

/** Where on the page a stop points; it follows when the page changes its shape. A whole pane is pointed at by its middle. */
function usePlace(points: readonly string[]): Place | null {
  const [place, setPlace] = useState<Place | null>(null)
  useEffect(() => {
    const measure = () => {
      const target = points.map((p) => document.querySelector(p)).find((e) => e && e.clientHeight > 0)
      const { left, top, width, height } = target?.getBoundingClientRect() ?? new DOMRect(0, 0, 0, 0)
      const far = width > window.innerWidth / 2 && height > window.innerHeight / 3
      setPlace(
        far
          ? { left: left + width / 2 - 60, top: top + height / 4, width: 120, height: 60 }
          : { left, top, width, height },
      )
    }
    measure()
    window.addEventListener('resize', measure)
    return () => window.removeEventListener('resize', measure)
  }, [points])
  return place
}
