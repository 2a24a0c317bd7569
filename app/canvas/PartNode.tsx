import { memo } from 'react'
import { Handle, type Node, type NodeProps, Position } from 'reactflow'
import { boxOf, kindOf, type Part, type Side, symbolOf, terminalsOf, workedSymbolOf } from '../../engine'
import { useGuarding } from '../lenses/painted'
import { isLabelled } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { Marks } from '../symbols/Marks'
import { useWorked } from '../tryit/worked'
import { isLegible } from './density'
import { useLettering } from './lettering'
import { COARSE, reachOf, reachStyle } from './reach'
import { PX } from './scale'
import { useTrouble } from './trouble'

export type PartNodeType = Node<{ part: Part }, 'part'>

const POSITION: Readonly<Record<Side, Position>> = {
  left: Position.Left,
  right: Position.Right,
  up: Position.Top,
  down: Position.Bottom,
}

/** A part on the sheet: its symbol, and a handle on each terminal. */
export const PartNode = memo(function PartNode({ data: { part }, selected }: NodeProps<PartNodeType>) {
  const labelled = useLatest((s) => isLabelled(s.scene, part.id))
  const { conductors } = useOpen.getState().design
  const { w, h } = boxOf(part, conductors)
  const trouble = useTrouble(part.id)
  const guarding = useGuarding(part.id)
  const zoom = useLettering()
  const terminals = terminalsOf(part, conductors)
  const worked = useWorked(part.id)
  const symbol = worked ? workedSymbolOf(part, conductors) : symbolOf(part, conductors)
  const marks = symbol.marks.filter((m) => m.is !== 'text' || isLegible(m.height, zoom))
  return (
    <div
      className={`part${selected ? ' selected' : ''}${trouble ? ` trouble ${trouble}` : ''}${guarding ? ' guarding' : ''}`}
      data-part={part.id}
      data-designation={part.designation}
      data-worked={worked || undefined}
      title={partLabel(part)}
      style={{ width: w * PX, height: h * PX }}
    >
      <svg viewBox={`0 0 ${w} ${h}`} width={w * PX} height={h * PX} aria-hidden>
        <Marks marks={marks} />
      </svg>
      {!labelled && <span className="name">{[part.designation, part.name].filter(Boolean).join(' ')}</span>}
      {terminals.map((t) => (
        <Handle
          key={t.key}
          id={t.key}
          type="source"
          position={POSITION[t.side]}
          className={`terminal ${t.pole}`}
          title={`${part.designation} ${t.name}`}
          style={{
            left: (t.x - part.x) * PX,
            top: (t.y - part.y) * PX,
            ...(COARSE ? reachStyle(t, reachOf(t, terminals, zoom)) : {}),
          }}
        />
      ))}
    </div>
  )
})

/** What a screen reader says for a part, and the pointer that rests on it. */
export const partLabel = (part: Part): string =>
  [...new Set([part.designation, part.name, kindOf(part.kind)?.title])].filter(Boolean).join(', ')
