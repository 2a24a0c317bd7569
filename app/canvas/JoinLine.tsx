import type { ConnectionLineComponentProps } from 'reactflow'
import { canJoin } from '../../engine'
import { useOpen } from '../store/open'
import { elbow } from './follow'
import type { PartNodeType } from './PartNode'

/** The line under the hand while a conductor is drawn; crossed out, with the reason, where it may not end. */
export function JoinLine(p: ConnectionLineComponentProps<PartNodeType>) {
  const design = useOpen((s) => s.design)
  const { fromX, fromY, toX, toY, fromHandle, toHandle } = p
  const refused =
    fromHandle.id && toHandle?.id
      ? canJoin(
          design,
          { part: fromHandle.nodeId, terminal: fromHandle.id },
          { part: toHandle.nodeId, terminal: toHandle.id },
        )
      : null
  const state = refused ? 'refused' : toHandle ? 'ready' : ''
  const side = SIDE[p.fromPosition]
  const points = elbow([fromX, fromY], side, [toX, toY], OPPOSITE[side])
  return (
    <g className={`joining ${state}`}>
      <polyline points={points.map((q) => q.join(',')).join(' ')} />
      {refused ? (
        <path d={`M${toX - 6} ${toY - 6}l12 12m0 -12l-12 12`} />
      ) : (
        <circle cx={toX} cy={toY} r={toHandle ? 7 : 3.5} />
      )}
      {refused && (
        <foreignObject x={toX + 14} y={toY + 10} width={260} height={90}>
          <p className="why-not">{refused.why}</p>
        </foreignObject>
      )}
    </g>
  )
}

const SIDE = { left: 'left', right: 'right', top: 'up', bottom: 'down' } as const
const OPPOSITE = { left: 'right', right: 'left', up: 'down', down: 'up' } as const
