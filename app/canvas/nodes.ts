import { useCallback, useLayoutEffect, useState } from 'react'
import { applyNodeChanges, type NodeChange } from 'reactflow'
import { boxOf, type Part, partById } from '../../engine'
import { useHand, useMotion } from '../store/hand'
import { useOpen } from '../store/open'
import { seenDesign, useSeen } from '../store/seen'
import { useView } from '../store/view'
import { isAdding } from './adding'
import { isShown } from './drawn'
import { type PartNodeType, partLabel } from './PartNode'
import { PX } from './scale'

/**
 * The library's nodes, made from the parts of the design. The design is the truth; a node differs from it only
 * while a hand drags it. Nodes of untouched parts keep their identity, so that nothing else is drawn again.
 */
export function useNodes() {
  const parts = useSeen((s) => s.parts)
  const readOnly = useOpen((s) => s.hold !== 'writing')
  const selected = useView((s) => s.parts)
  const view = useView((s) => s.view)
  const trying = useView((s) => s.trying)
  const [nodes, setNodes] = useState<PartNodeType[]>([])

  useLayoutEffect(() => {
    setNodes((before) => {
      const known = new Map(before.map((n) => [n.id, n]))
      const { conductors } = useOpen.getState().design
      const shown = parts.filter((part) => isShown(part, view, conductors))
      return shown.map((part) =>
        nodeOf(part, selected.has(part.id), !readOnly && !trying, known.get(part.id)),
      )
    })
  }, [parts, selected, readOnly, view, trying])

  const onNodesChange = useCallback((changes: NodeChange<PartNodeType>[]) => {
    // While a hand carries a part only its element moves; the node follows when it is put down.
    const own = changes.filter((c) => (c.type === 'position' && !c.dragging) || c.type === 'dimensions')
    if (own.length) setNodes((before) => applyNodeChanges(own, before))
    const picked = changes.filter((c) => c.type === 'select')
    if (picked.length === 0) return
    const next = new Set(useView.getState().parts)
    for (const c of picked) c.selected ? next.add(c.id) : next.delete(c.id)
    const fresh = picked.some((c) => c.selected) && !isAdding()
    const others = fresh ? { conductors: new Set<string>(), texts: new Set<string>() } : {}
    useView.setState({ parts: next, zone: null, finding: null, ...others })
  }, [])

  /** The sheet moves under the hand: where there are many nodes only those in sight are drawn, the carried ones among them. */
  const onMove = useCallback(() => {
    const { parts: carried } = useHand.getState()
    if (carried.size === 0) return
    const [dx, dy] = useMotion.getState().by
    const seen = seenDesign()
    setNodes((before) =>
      before.map((n) => {
        const part = carried.has(n.id) ? partById(seen, n.id) : undefined
        return part ? { ...n, position: { x: (part.x + dx) * PX, y: (part.y + dy) * PX } } : n
      }),
    )
  }, [])

  return { nodes, onNodesChange, onMove }
}

function nodeOf(part: Part, selected: boolean, draggable: boolean, before?: PartNodeType): PartNodeType {
  const position = { x: part.x * PX, y: part.y * PX }
  const same =
    before &&
    before.data.part === part &&
    before.selected === selected &&
    before.draggable === draggable &&
    before.position.x === position.x &&
    before.position.y === position.y
  if (same) return before
  const { w, h } = boxOf(part, useOpen.getState().design.conductors)
  return {
    ...before,
    id: part.id,
    type: 'part',
    position,
    width: w * PX,
    height: h * PX,
    selected,
    draggable,
    data: before?.data.part === part ? before.data : { part },
    ariaLabel: partLabel(part),
  }
}
