import { useEffect, useState } from 'react'
import { useSay } from '../store/say'

const SHOWN_MS = 6000

/** What was just done or refused: read out, and shown; a refusal stands beside the pointer. */
export function Said() {
  const { text, refused, at, n } = useSay()
  const [shown, setShown] = useState(false)
  useEffect(() => {
    if (n === 0) return
    setShown(true)
    const timer = setTimeout(() => setShown(false), SHOWN_MS)
    return () => clearTimeout(timer)
  }, [n])
  const place =
    at && (at.x || at.y)
      ? {
          left: Math.min(at.x + 16, window.innerWidth - 340),
          top: Math.min(at.y + 16, window.innerHeight - 90),
        }
      : { left: '50%', bottom: 50, transform: 'translateX(-50%)' }
  return (
    <>
      <div
        className="unseen"
        role="status"
        aria-live={refused ? 'assertive' : 'polite'}
        aria-label="Last step"
      >
        {text}
      </div>
      {shown && (
        <div className={`said${refused ? ' refused' : ''}`} style={place} aria-hidden>
          {text}
        </div>
      )}
    </>
  )
}
