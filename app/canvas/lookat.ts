import { useEffect } from 'react'
import { type Rect, useReactFlow } from 'reactflow'
import { boxOf, conductorById, type Design, partById } from '../../engine'
import { laidOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { seenDesign } from '../store/seen'
import { type LookAt, useView } from '../store/view'
import { isShown } from './drawn'
import type { PartNodeType } from './PartNode'
import { PX } from './scale'

interface Box {
  x1: number
  y1: number
  x2: number
  y2: number
}

/** Brings asked-for places into sight; leaves the sheet alone when they already are. */
export function useLookAt(): void {
  const flow = useReactFlow<PartNodeType>()
  const wish = useView((s) => s.lookAt)
  useEffect(() => {
    if (!wish) return
    if (wish.at === 'zoom') {
      void flow.zoomTo(flow.getZoom() * wish.by)
      return
    }
    if (wish.at === 'view' && isPeopled(flow)) return
    const box = boxFor(seenDesign(), wish)
    if (!box) {
      // An empty sheet is looked at in the size that drawing is done in, whatever lay there before.
      if (wish.at === 'all') void flow.setViewport({ x: 0, y: 0, zoom: 1 })
      return
    }
    const bounds = rectOf(box)
    const calm = window.matchMedia('(prefers-reduced-motion: reduce)').matches
    const duration = calm ? 0 : 220
    if (wish.at === 'all' || wish.at === 'view') {
      void flow.fitBounds(bounds, { padding: 0.03, duration })
      return whenLaidOut(() => {
        const whole = boxFor(seenDesign(), wish)
        if (whole) void flow.fitBounds(rectOf(whole), { padding: 0.03, duration })
      })
    }
    if (wish.at === 'items' && wish.zoom) {
      void flow.fitBounds(bounds, { padding: 0.3, duration })
      return
    }
    if (inSight(flow, bounds)) return
    const zoom = Math.max(flow.getZoom(), 0.6)
    void flow.setCenter(bounds.x + bounds.width / 2, bounds.y + bounds.height / 2, { zoom, duration })
  }, [wish, flow])
}

const rectOf = ({ x1, y1, x2, y2 }: Box): Rect => ({
  x: x1 * PX,
  y: y1 * PX,
  width: (x2 - x1) * PX,
  height: (y2 - y1) * PX,
})

/**
 * Routes and words come after the parts: once the layout of what is on the table is there, looks again, unless a
 * hand has been on the sheet meanwhile. Gives what calls it off.
 */
function whenLaidOut(look: () => void): () => void {
  const isThere = () => {
    const { laidOut, scene, checked } = useLatest.getState()
    const { design } = useOpen.getState()
    return laidOut === design && checked === design && scene?.view === useView.getState().view
  }
  if (isThere()) return () => {}
  const over = new AbortController()
  const hands = { capture: true, passive: true, signal: over.signal }
  const unwatch = useLatest.subscribe(() => {
    if (!isThere()) return
    over.abort()
    look()
  })
  over.signal.addEventListener('abort', unwatch)
  const sheet = document.querySelector('[data-canvas]')
  for (const hand of ['pointerdown', 'wheel', 'touchstart'])
    sheet?.addEventListener(hand, () => over.abort(), hands)
  return () => over.abort()
}

/** Does the sheet as it lies show a fair part of what the view has to show? */
function isPeopled(flow: ReturnType<typeof useReactFlow<PartNodeType>>): boolean {
  const design = seenDesign()
  const { view } = useView.getState()
  const shown = design.parts.filter((p) => isShown(p, view, design.conductors))
  const sheet = document.querySelector('[data-canvas]')?.getBoundingClientRect()
  if (!sheet || shown.length === 0) return true
  const there = shown.filter((p) => {
    const { x, y, w, h } = boxOf(p)
    const at = flow.flowToScreenPosition({ x: (x + w / 2) * PX, y: (y + h / 2) * PX })
    return at.x >= sheet.left && at.x <= sheet.right && at.y >= sheet.top && at.y <= sheet.bottom
  })
  return there.length >= Math.min(shown.length, FEW)
}

/** So many parts in sight are something to go on with. */
const FEW = 3

/** Is all of it on the sheet as it lies, at a size that can be read? */
function inSight(flow: ReturnType<typeof useReactFlow<PartNodeType>>, box: Rect): boolean {
  const sheet = document.querySelector('[data-canvas]')?.getBoundingClientRect()
  if (!sheet || flow.getZoom() < 0.45) return false
  const a = flow.flowToScreenPosition({ x: box.x, y: box.y })
  const b = flow.flowToScreenPosition({ x: box.x + box.width, y: box.y + box.height })
  return a.x >= sheet.left && a.y >= sheet.top && b.x <= sheet.right && b.y <= sheet.bottom
}

function boxFor(design: Design, wish: Exclude<LookAt, { at: 'zoom' }>): Box | null {
  const box: Box = { x1: Infinity, y1: Infinity, x2: -Infinity, y2: -Infinity }
  const take = (x: number, y: number) => {
    box.x1 = Math.min(box.x1, x)
    box.y1 = Math.min(box.y1, y)
    box.x2 = Math.max(box.x2, x)
    box.y2 = Math.max(box.y2, y)
  }
  const takePart = (id: string) => {
    const part = partById(design, id)
    if (!part) return
    const { w, h } = boxOf(part)
    take(part.x, part.y)
    take(part.x + w, part.y + h)
  }
  const { scene: newest, laidOut } = useLatest.getState()
  // A scene of the design that was on the table before says nothing about this one.
  const scene = laidOut?.id === design.id ? newest : null
  if (wish.at === 'box') {
    take(wish.box.x, wish.box.y)
    take(wish.box.x + wish.box.w, wish.box.y + wish.box.h)
  } else if (wish.at === 'all' || wish.at === 'view') {
    const { view } = useView.getState()
    for (const p of design.parts) if (isShown(p, view, design.conductors)) takePart(p.id)
    if (scene) {
      const { x, y, w, h } = scene.box
      take(x, y)
      take(x + w, y + h)
    }
  } else {
    for (const id of wish.parts) takePart(id)
    for (const id of wish.conductors) {
      const laid = laidOf(scene, id)
      const c = conductorById(design, id)
      if (laid) for (const [x, y] of laid.points) take(x, y)
      else if (c) for (const end of [c.from, c.to]) takePart(end.part)
    }
  }
  return box.x1 <= box.x2 ? box : null
}
