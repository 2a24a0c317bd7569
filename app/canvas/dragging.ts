import { useMemo } from 'react'
import type { OnNodeDrag, SelectionDragHandler } from 'reactflow'
import { partById, snap } from '../../engine'
import { carry, putDown } from '../store/hand'
import { doEdit } from '../store/open'
import { inThisView, seenDesign } from '../store/seen'
import type { PartNodeType } from './PartNode'
import { PX } from './scale'

function drag(nodes: readonly PartNodeType[]): void {
  const [first] = nodes
  const part = first && partById(seenDesign(), first.id)
  if (!part) return
  carry(
    nodes.map((n) => n.id),
    [first.position.x / PX - part.x, first.position.y / PX - part.y],
  )
}

function drop(nodes: readonly PartNodeType[]): void {
  putDown()
  const to = nodes.map((n) => ({ part: n.id, x: snap(n.position.x / PX), y: snap(n.position.y / PX) }))
  const moved = to.some(({ part, x, y }) => {
    const before = partById(seenDesign(), part)
    return before && (before.x !== x || before.y !== y)
  })
  if (moved)
    doEdit(nodes.length === 1 ? 'Move part' : `Move ${nodes.length} parts`, inThisView({ do: 'move', to }))
}

/** Dragging by hand: parts are carried while it lasts, one edit when it ends. */
export function useDragging() {
  return useMemo(() => {
    const onNodeDrag: OnNodeDrag<PartNodeType> = (_, __, nodes) => drag(nodes)
    const onNodeDragStop: OnNodeDrag<PartNodeType> = (_, __, nodes) => drop(nodes)
    const onSelectionDrag: SelectionDragHandler<PartNodeType> = (_, nodes) => drag(nodes)
    const onSelectionDragStop: SelectionDragHandler<PartNodeType> = (_, nodes) => drop(nodes)
    return { onNodeDrag, onNodeDragStop, onSelectionDrag, onSelectionDragStop }
  }, [])
}
