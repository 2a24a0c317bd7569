import type { PointerEvent } from 'react'
import { snap, type XY } from '../../engine'
import { useOpen } from '../store/open'
import { sheetPoint } from '../store/sheetpoint'
import { useView } from '../store/view'

/** Less than this, CSS px, is a click. */
const SLACK_PX = 4

/** Follows the pointer from where it went down, in grid steps; `drop` comes once, unless it was a click or broke off. */
export function hold(
  e: PointerEvent<Element>,
  { move, drop, end }: { move: (by: XY) => void; drop: (by: XY) => void; end: () => void },
): void {
  const from = sheetPoint(e.clientX, e.clientY)
  if (e.button !== 0 || !from || useView.getState().trying) return
  e.stopPropagation()
  if (useOpen.getState().hold !== 'writing') return
  const { currentTarget, clientX, clientY, pointerId } = e
  const target = currentTarget as SVGElement
  const over = new AbortController()
  const on = <K extends keyof SVGElementEventMap>(type: K, act: (ev: SVGElementEventMap[K]) => void) =>
    target.addEventListener(type, act, { signal: over.signal })
  let by: XY | null = null
  target.setPointerCapture(pointerId)
  on('pointermove', (ev) => {
    const to = sheetPoint(ev.clientX, ev.clientY)
    if (!to || (by === null && Math.hypot(ev.clientX - clientX, ev.clientY - clientY) < SLACK_PX)) return
    by = [snap(to[0] - from[0]), snap(to[1] - from[1])]
    move(by)
  })
  on('pointerup', () => {
    over.abort()
    end()
    if (by) drop(by)
  })
  on('pointercancel', () => {
    over.abort()
    end()
  })
}
