import 'reactflow/dist/style.css'
import { createRoot } from 'react-dom/client'
import { ReactFlow, useEdgesState, useNodesState } from 'reactflow'
import type { BareDrawing } from './bareof'

/** The canvas library as it comes: its default nodes and edges, at the places of a design. */
function Bare({ nodes: parts, edges: joins }: BareDrawing) {
  const [nodes, , onNodesChange] = useNodesState(parts)
  const [edges] = useEdgesState(joins)
  return <ReactFlow nodes={nodes} edges={edges} onNodesChange={onNodesChange} minZoom={0.1} fitView />
}

const drawing = (await (await fetch('./drawing.json')).json()) as BareDrawing
createRoot(document.getElementById('root')!).render(<Bare {...drawing} />)
