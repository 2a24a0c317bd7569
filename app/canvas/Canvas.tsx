import 'reactflow/dist/base.css'
import '../theme/canvas.css'
import '../theme/joining.css'
import '../theme/runs.css'
import { useCallback, useEffect, useRef } from 'react'
import {
  Background,
  BackgroundVariant,
  ConnectionMode,
  type OnConnectEnd,
  ReactFlow,
  ReactFlowProvider,
  SelectionMode,
  useReactFlow,
} from 'reactflow'
import { FirstCautions } from '../help/FirstCautions'
import { useOpen } from '../store/open'
import { setToSheet } from '../store/sheetpoint'
import { clearSelection, select, useView } from '../store/view'
import { noteAdding } from './adding'
import { selectAmong } from './among'
import { useBusy } from './busy'
import { ConductorLayer } from './ConductorLayer'
import { useDragging } from './dragging'
import { EmptySheet } from './EmptySheet'
import { JoinLine } from './JoinLine'
import { joinAt, joinTerminals } from './joining'
import { useLookAt } from './lookat'
import { useNodes } from './nodes'
import { PartNode, type PartNodeType } from './PartNode'
import { SheetMenu } from './SheetMenu'
import { PX } from './scale'
import { TwoTabs } from './TwoTabs'

const TYPES = { part: PartNode }
const COARSE = window.matchMedia('(pointer: coarse)').matches
const GRID_PX: [number, number] = [10, 10]

function Sheet() {
  const { nodes, onNodesChange } = useNodes()
  const dragging = useDragging()
  const flow = useReactFlow<PartNodeType>()
  const box = useRef<HTMLDivElement>(null)
  useLookAt()
  const busy = useBusy()
  const empty = useOpen((s) => s.hold !== 'loading' && s.design.parts.length === 0)

  useEffect(
    () =>
      setToSheet((x, y) => {
        const rect = box.current?.getBoundingClientRect()
        const inside = rect && x >= rect.left && x <= rect.right && y >= rect.top && y <= rect.bottom
        if (!inside) return null
        const p = flow.screenToFlowPosition({ x, y })
        return [p.x / PX, p.y / PX]
      }),
    [flow],
  )

  const onConnectEnd = useCallback<OnConnectEnd>((event, state) => {
    if (!state.fromHandle?.id || state.toHandle) return
    const at = 'changedTouches' in event ? event.changedTouches[0] : event
    if (at) joinAt({ part: state.fromHandle.nodeId, terminal: state.fromHandle.id }, at.clientX, at.clientY)
  }, [])

  const noteMiddle = useCallback(() => {
    const rect = box.current?.getBoundingClientRect()
    if (!rect) return
    const p = flow.screenToFlowPosition({ x: rect.left + rect.width / 2, y: rect.top + rect.height / 2 })
    useView.setState({ middle: [p.x / PX, p.y / PX] })
  }, [flow])

  return (
    <SheetMenu>
      <div
        ref={box}
        className="sheet"
        data-canvas
        aria-busy={busy}
        onPointerDownCapture={noteAdding}
        onPointerMove={(e) => {
          const { x, y } = flow.screenToFlowPosition({ x: e.clientX, y: e.clientY })
          useView.setState({ pointer: [x / PX, y / PX] })
        }}
        onPointerLeave={() => useView.setState({ pointer: null })}
      >
        <ReactFlow<PartNodeType>
          nodes={nodes}
          onNodesChange={onNodesChange}
          nodeTypes={TYPES}
          {...dragging}
          onConnect={joinTerminals}
          onConnectEnd={onConnectEnd}
          connectionMode={ConnectionMode.Loose}
          connectionLineComponent={JoinLine}
          connectionRadius={18}
          connectOnClick
          snapToGrid
          snapGrid={GRID_PX}
          minZoom={0.1}
          maxZoom={4}
          panOnScroll={!COARSE}
          zoomOnScroll={false}
          panOnDrag={COARSE ? true : [1]}
          selectionOnDrag={!COARSE}
          selectionMode={SelectionMode.Partial}
          selectionKeyCode={COARSE ? null : 'Shift'}
          multiSelectionKeyCode="Shift"
          deleteKeyCode={null}
          zoomOnDoubleClick={false}
          disableKeyboardA11y
          onlyRenderVisibleElements={nodes.length > 400}
          onPaneClick={clearSelection}
          onPaneContextMenu={clearSelection}
          onNodeContextMenu={(_, node) => {
            if (!useView.getState().parts.has(node.id)) select([node.id])
          }}
          onMoveEnd={noteMiddle}
          onSelectionEnd={selectAmong}
          proOptions={{ hideAttribution: true }}
        >
          <Background variant={BackgroundVariant.Lines} gap={10 * PX} className="grid" />
          <ConductorLayer />
        </ReactFlow>
        {empty && <EmptySheet />}
        <TwoTabs />
        <FirstCautions />
      </div>
    </SheetMenu>
  )
}

/** The sheet on the table. */
export function Canvas() {
  return (
    <ReactFlowProvider>
      <Sheet />
    </ReactFlowProvider>
  )
}
