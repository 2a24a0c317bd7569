import { type PointerEvent, useCallback, useEffect, useLayoutEffect, useRef } from 'react'
import { useReactFlow } from 'reactflow'
import type { XY } from '../../engine'
import { setPointer } from '../store/hand'
import { setToSheet } from '../store/sheetpoint'
import { useView } from '../store/view'
import type { PartNodeType } from './PartNode'
import { PX } from './scale'

/** How the page lies on the sheet: holds the drawing still when the shelf goes or comes, and keeps the pointer and the middle of what is in sight up to date, in mm. */
export function useSpace() {
  const flow = useReactFlow<PartNodeType>()
  const box = useRef<HTMLDivElement>(null)

  const toSheet = useCallback(
    (x: number, y: number): XY => {
      const p = flow.screenToFlowPosition({ x, y }, { snapToGrid: false })
      return [p.x / PX, p.y / PX]
    },
    [flow],
  )
  useEffect(() => {
    setToSheet((x, y) => {
      const rect = box.current?.getBoundingClientRect()
      const inside = rect && x >= rect.left && x <= rect.right && y >= rect.top && y <= rect.bottom
      return inside ? toSheet(x, y) : null
    })
  }, [toSheet])

  const shelf = useView((s) => s.shelf && !s.trying)
  const left = useRef<number | null>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the shelf moves the edge of the sheet
  useLayoutEffect(() => {
    const now = box.current?.getBoundingClientRect().left ?? 0
    const by = left.current === null ? 0 : left.current - now
    left.current = now
    if (by === 0) return
    const { x, y, zoom } = flow.getViewport()
    void flow.setViewport({ x: x + by, y, zoom })
  }, [shelf, flow])

  const onPointerMove = useCallback((e: PointerEvent) => setPointer(toSheet(e.clientX, e.clientY)), [toSheet])
  const onMoveEnd = useCallback(() => {
    const rect = box.current?.getBoundingClientRect()
    if (!rect) return
    useView.setState({ middle: toSheet(rect.left + rect.width / 2, rect.top + rect.height / 2) })
  }, [toSheet])
  return { box, onPointerMove, onMoveEnd }
}

export const leaveSheet = () => setPointer(null)
