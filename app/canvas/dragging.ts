import { useMemo } from 'react'
import type { OnNodeDrag, SelectionDragHandler } from 'reactflow'
import { snap, type XY } from '../../engine'
import { doEdit, useOpen } from '../store/open'
import { setMoving } from '../store/view'
import type { PartNodeType } from './PartNode'
import { PX } from './scale'

const places = (nodes: readonly PartNodeType[]): ReadonlyMap<string, XY> =>
  new Map(nodes.map((n) => [n.id, [n.position.x / PX, n.position.y / PX]]))

function drop(nodes: readonly PartNodeType[]): void {
  setMoving(new Map())
  const to = nodes.map((n) => ({ part: n.id, x: snap(n.position.x / PX), y: snap(n.position.y / PX) }))
  const moved = to.some(({ part, x, y }) => {
    const before = useOpen.getState().design.parts.find((p) => p.id === part)
    return before && (before.x !== x || before.y !== y)
  })
  if (moved) doEdit(nodes.length === 1 ? 'Move part' : `Move ${nodes.length} parts`, { do: 'move', to })
}

/** Dragging by hand: live positions while it lasts, one edit when it ends. */
export function useDragging() {
  return useMemo(() => {
    const onNodeDrag: OnNodeDrag<PartNodeType> = (_, __, nodes) => setMoving(places(nodes))
    const onNodeDragStop: OnNodeDrag<PartNodeType> = (_, __, nodes) => drop(nodes)
    const onSelectionDrag: SelectionDragHandler<PartNodeType> = (_, nodes) => setMoving(places(nodes))
    const onSelectionDragStop: SelectionDragHandler<PartNodeType> = (_, nodes) => drop(nodes)
    return { onNodeDrag, onNodeDragStop, onSelectionDrag, onSelectionDragStop }
  }, [])
}
