import { memo, useState } from 'react'
import { createPortal } from 'react-dom'
import type { Kind } from '../../engine'
import { conductorUnder } from '../store/conductorunder'
import { focusName } from '../store/focusname'
import { placePart } from '../store/place'
import { refuse } from '../store/say'
import { sheetPoint } from '../store/sheetpoint'
import { KindPicture } from '../symbols/KindPicture'

const START_PX = 6

/** One kind on the shelf. Works alike by mouse, pen and finger: the drag is our own, not the browser's. */
export const ShelfItem = memo(function ShelfItem({ kind, disabled }: { kind: Kind; disabled: boolean }) {
  const [ghost, setGhost] = useState<{ x: number; y: number } | null>(null)

  const drag = (down: React.PointerEvent<HTMLButtonElement>) => {
    if (disabled || down.button !== 0) return
    const button = down.currentTarget
    const { pointerId, clientX, clientY } = down
    let dragging = false
    const move = (e: PointerEvent) => {
      if (e.pointerId !== pointerId) return
      if (!dragging && Math.hypot(e.clientX - clientX, e.clientY - clientY) < START_PX) return
      dragging = true
      setGhost({ x: e.clientX, y: e.clientY })
    }
    const end = (e: PointerEvent) => {
      if (e.pointerId !== pointerId) return
      window.removeEventListener('pointermove', move)
      window.removeEventListener('pointerup', end)
      window.removeEventListener('pointercancel', end)
      setGhost(null)
      if (!dragging) return
      // The click that follows a drag is not a wish for a second part.
      button.addEventListener('click', (click) => click.stopImmediatePropagation(), {
        capture: true,
        once: true,
      })
      setTimeout(() => button.blur())
      if (e.type !== 'pointerup') return
      const at = sheetPoint(e.clientX, e.clientY)
      if (!at) refuse('Let go beside the sheet: nothing is placed.')
      else if (placePart(kind, { just: at, into: conductorUnder(e) })) focusName()
    }
    window.addEventListener('pointermove', move)
    window.addEventListener('pointerup', end)
    window.addEventListener('pointercancel', end)
  }

  return (
    <>
      <button
        type="button"
        className="shelf-item"
        disabled={disabled}
        title={kind.about}
        data-kind={kind.key}
        onPointerDown={drag}
        onClick={() => placePart(kind, { near: null }) && focusName()}
      >
        <span className="picture">
          <KindPicture kind={kind} />
        </span>
        <span>{kind.title}</span>
      </button>
      {ghost &&
        createPortal(
          <div className="ghost" style={{ left: ghost.x, top: ghost.y }}>
            <KindPicture kind={kind} scale={4} />
          </div>,
          document.body,
        )}
    </>
  )
})
