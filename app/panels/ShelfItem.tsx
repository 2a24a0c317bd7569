import { memo, useMemo, useState } from 'react'
import { createPortal } from 'react-dom'
import { initialValues, type Kind } from '../../engine'
import { placePart } from '../store/place'
import { sheetPoint } from '../store/sheetpoint'
import { Marks } from '../symbols/Marks'

const START_PX = 6

/** One kind on the shelf. Works alike by mouse, pen and finger: the drag is our own, not the browser's. */
export const ShelfItem = memo(function ShelfItem({ kind, disabled }: { kind: Kind; disabled: boolean }) {
  const drawing = useMemo(() => kind.symbol(initialValues(kind.fields)), [kind])
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
      const at = e.type === 'pointerup' ? sheetPoint(e.clientX, e.clientY) : null
      if (at) placePart(kind, at)
    }
    window.addEventListener('pointermove', move)
    window.addEventListener('pointerup', end)
    window.addEventListener('pointercancel', end)
  }

  const scale = Math.min(40 / drawing.w, 26 / drawing.h, 2)
  const picture = (factor: number) => (
    <svg
      viewBox={`-0.5 -0.5 ${drawing.w + 1} ${drawing.h + 1}`}
      width={(drawing.w + 1) * factor}
      height={(drawing.h + 1) * factor}
      aria-hidden
    >
      <Marks marks={drawing.marks} />
    </svg>
  )
  return (
    <>
      <button
        type="button"
        className="shelf-item"
        disabled={disabled}
        title={kind.about}
        data-kind={kind.key}
        onPointerDown={drag}
        onClick={() => placePart(kind, null)}
      >
        <span className="picture">{picture(scale)}</span>
        <span>{kind.title}</span>
      </button>
      {ghost &&
        createPortal(
          <div className="ghost" style={{ left: ghost.x, top: ghost.y }}>
            {picture(4)}
          </div>,
          document.body,
        )}
    </>
  )
})
