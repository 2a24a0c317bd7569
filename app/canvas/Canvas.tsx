import 'reactflow/dist/base.css'
import '../theme/canvas.css'
import '../theme/joining.css'
import '../theme/runs.css'
import '../theme/lenses.css'
import '../theme/onsheet.css'
import '../theme/tryit.css'
import {
  Background,
  BackgroundVariant,
  ConnectionMode,
  ReactFlow,
  ReactFlowProvider,
  SelectionMode,
} from 'reactflow'
import { LensKey } from '../lenses/LensKey'
import { useOpen } from '../store/open'
import { clearSelection, pointAt, select, useView } from '../store/view'
import { touchPart } from '../tryit/handles'
import { TryBanner } from '../tryit/TryBanner'
import { noteAdding } from './adding'
import { selectAmong } from './among'
import { useAnchor } from './anchor'
import { useBusy } from './busy'
import { ConductorLayer } from './ConductorLayer'
import { useCarrying } from './carrying'
import { useCoarse } from './coarse'
import { useDragging } from './dragging'
import { EmptySheet } from './EmptySheet'
import { JoinLine } from './JoinLine'
import { joinOnPart, joinTerminals } from './joining'
import { useLookAt } from './lookat'
import { useNodes } from './nodes'
import { PartNode, type PartNodeType } from './PartNode'
import { COARSE } from './reach'
import { SheetMenu } from './SheetMenu'
import { PX } from './scale'
import { leaveSheet, useSpace } from './space'
import { TwoTabs } from './TwoTabs'

const TYPES = { part: PartNode }
const GRID_PX: [number, number] = [10, 10]

function Sheet() {
  const { nodes, onNodesChange, onMove } = useNodes()
  const dragging = useDragging()
  const { box, onPointerMove, onMoveEnd } = useSpace()
  useCarrying(box)
  useCoarse(box)
  useLookAt()
  useAnchor()
  const busy = useBusy()
  const trying = useView((s) => s.trying)
  // Behind the page of another stage nothing of the drawing takes the keyboard.
  const behind = useView((s) => s.stage !== 'drawing')
  const empty = useOpen((s) => s.hold !== 'loading' && s.design.parts.length === 0)

  return (
    <SheetMenu disabled={trying}>
      <div
        ref={box}
        className={trying ? 'sheet trying' : 'sheet'}
        data-canvas
        inert={behind}
        aria-busy={busy}
        onPointerDownCapture={noteAdding}
        onPointerMove={onPointerMove}
        onPointerLeave={leaveSheet}
      >
        <ReactFlow<PartNodeType>
          nodes={nodes}
          onNodesChange={onNodesChange}
          nodeTypes={TYPES}
          {...dragging}
          onConnect={joinTerminals}
          onConnectEnd={joinOnPart}
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
          nodesConnectable={!trying}
          elementsSelectable={!trying}
          onNodeClick={(e, node) => useView.getState().trying && touchPart(node.id, e.clientX, e.clientY)}
          onPaneClick={clearSelection}
          onPaneContextMenu={clearSelection}
          onNodeContextMenu={(_, node) => {
            if (!useView.getState().parts.has(node.id)) select([node.id])
          }}
          onNodeMouseEnter={(_, node) => useView.getState().lens === 'protection' && pointAt(node.id)}
          onNodeMouseLeave={() => useView.getState().pointed !== null && pointAt(null)}
          onMove={onMove}
          onMoveEnd={onMoveEnd}
          onSelectionEnd={selectAmong}
          proOptions={{ hideAttribution: true }}
        >
          <Background variant={BackgroundVariant.Lines} gap={10 * PX} className="grid" />
          <ConductorLayer />
        </ReactFlow>
        {empty && <EmptySheet />}
        <TryBanner />
        <LensKey />
        <TwoTabs />
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
