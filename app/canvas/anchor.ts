import { useLayoutEffect, useRef } from 'react'
import { useReactFlow } from 'reactflow'
import { boxOf, type Design, designIn, type XY } from '../../engine'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import type { PartNodeType } from './PartNode'
import { PX } from './scale'

/**
 * Where a view has a layout of its own, what one looked at stays in its place on the page when the view changes: the
 * selected parts, else the part nearest to the middle of what is in sight.
 */
export function useAnchor(): void {
  const flow = useReactFlow<PartNodeType>()
  const view = useView((s) => s.view)
  const before = useRef(view)
  useLayoutEffect(() => {
    if (before.current === view) return
    const { design } = useOpen.getState()
    const [was, now] = [designIn(design, before.current), designIn(design, view)]
    before.current = view
    const anchors = anchorsIn(was)
    const [a, b] = [middleOf(was, anchors), middleOf(now, anchors)]
    if (!a || !b || (a[0] === b[0] && a[1] === b[1])) return
    const { x, y, zoom } = flow.getViewport()
    void flow.setViewport({ x: x + (a[0] - b[0]) * PX * zoom, y: y + (a[1] - b[1]) * PX * zoom, zoom })
  }, [view, flow])
}

function anchorsIn(was: Design): ReadonlySet<string> {
  const { parts, middle } = useView.getState()
  if (parts.size > 0) return parts
  let [nearest, least] = ['', Infinity]
  for (const part of was.parts) {
    const { x, y, w, h } = boxOf(part, was.conductors)
    const far = Math.hypot(x + w / 2 - middle[0], y + h / 2 - middle[1])
    if (far < least) [nearest, least] = [part.id, far]
  }
  return new Set([nearest])
}

/** The middle of some parts, mm. */
function middleOf(design: Design, ids: ReadonlySet<string>): XY | null {
  const boxes = design.parts.filter((p) => ids.has(p.id)).map((p) => boxOf(p, design.conductors))
  if (boxes.length === 0) return null
  const sum = (of: (box: (typeof boxes)[number]) => number) => boxes.reduce((all, box) => all + of(box), 0)
  return [sum((b) => b.x + b.w / 2) / boxes.length, sum((b) => b.y + b.h / 2) / boxes.length]
}
