import type { PointerEvent } from 'react'
import { type ConductorId, conductorById, type XY } from '../../engine'
import { setPulled } from '../store/hand'
import { laidOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { doEdit, nextUndo, undo, useOpen } from '../store/open'
import { pathEdit } from '../store/path'
import { refuse } from '../store/say'
import { seenDesign } from '../store/seen'
import { sheetPoint } from '../store/sheetpoint'
import { select, useView } from '../store/view'
import { isHeld, type Pulled, pull, stretchAt } from './segments'

/** Less than this, CSS px, is a click. */
const SLACK_PX = 4

/** Takes hold of a stretch of a conductor: it follows the pointer, and one edit is made when it is let go. */
export function takeHold(e: PointerEvent<SVGPathElement>, id: ConductorId): void {
  const points = laidOf(useLatest.getState().scene, id)?.points
  const conductor = conductorById(seenDesign(), id)
  const from = sheetPoint(e.clientX, e.clientY)
  const touch = e.pointerType !== 'mouse' && !useView.getState().conductors.has(id)
  if (e.button !== 0 || e.shiftKey || touch || !points || !conductor || !from) return
  e.stopPropagation()
  const { clientX, clientY, pointerId } = e
  // The line is drawn elsewhere while it is held, so the sheet follows the pointer.
  const sheet = e.currentTarget.closest<HTMLElement>('[data-canvas]')
  if (!sheet) return
  const k = stretchAt(points, from)
  const before = conductor.path.map(({ x, y }): XY => [x, y])
  let now: Pulled | null = null
  const over = new AbortController()
  const on = <K extends keyof HTMLElementEventMap>(type: K, act: (ev: HTMLElementEventMap[K]) => void) =>
    sheet.addEventListener(type, act, { signal: over.signal })
  on('pointermove', (ev) => {
    const far = Math.hypot(ev.clientX - clientX, ev.clientY - clientY)
    const to = sheetPoint(ev.clientX, ev.clientY)
    if (!to || (far < SLACK_PX && now === null)) return
    // Not before it is a drag: a sheet that holds the pointer would take the click from the line.
    if (now === null) sheet.setPointerCapture(pointerId)
    now = pull(points, k, [to[0] - from[0], to[1] - from[1]], before)
    setPulled(now && { conductor: id, points: now.points })
  })
  on('pointerup', () => {
    over.abort()
    if (now) hold(id, conductor.number, now.held)
    else setPulled(null)
  })
  on('pointercancel', () => {
    over.abort()
    setPulled(null)
  })
}

/** Holds a conductor by corners. Where the layout finds no room for them, the step is taken back and said so. */
function hold(id: ConductorId, number: string, held: readonly XY[]): void {
  const name = `Lay ${number} by hand`
  const path = held.map(([x, y]) => ({ x, y }))
  if (!doEdit(name, pathEdit(id, path))) {
    setPulled(null)
    return
  }
  select([], [id])
  const { design } = useOpen.getState()
  const unwatch = useLatest.subscribe(({ laidOut, scene }) => {
    const stale = useOpen.getState().design !== design
    if (!stale && laidOut !== design) return
    unwatch()
    setPulled(null)
    const points = laidOf(scene, id)?.points
    if (stale || !points || isHeld(points, held)) return
    if (nextUndo(useOpen.getState()) === name) undo()
    refuse(`There is no room for ${number} there: a part or another conductor is in the way.`)
  })
}
