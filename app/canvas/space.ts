import { type PointerEvent, useCallback, useEffect, useRef } from 'react'
import { useReactFlow } from 'reactflow'
import type { XY } from '../../engine'
import { setToSheet } from '../store/sheetpoint'
import { useView } from '../store/view'
import type { PartNodeType } from './PartNode'
import { PX } from './scale'

/** How the page lies on the sheet: keeps the pointer and the middle of what is in sight up to date, in mm. */
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

  const onPointerMove = useCallback(
    (e: PointerEvent) => useView.setState({ pointer: toSheet(e.clientX, e.clientY) }),
    [toSheet],
  )
  const onMoveEnd = useCallback(() => {
    const rect = box.current?.getBoundingClientRect()
    if (!rect) return
    useView.setState({ middle: toSheet(rect.left + rect.width / 2, rect.top + rect.height / 2) })
  }, [toSheet])
  return { box, onPointerMove, onMoveEnd }
}

export const leaveSheet = () => useView.setState({ pointer: null })
