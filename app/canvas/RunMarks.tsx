import type { XY } from '../../engine'
import { gripsOf } from './segments'

/** What the hand takes hold of: a short bar across each stretch that can be moved. */
export function Grips({ points }: { points: readonly XY[] }) {
  return gripsOf(points).map(({ at: [x, y], upright }) => (
    <rect
      key={`${x} ${y}`}
      className="grip"
      x={x - (upright ? 0.8 : 1.6)}
      y={y - (upright ? 1.6 : 0.8)}
      width={upright ? 1.6 : 3.2}
      height={upright ? 3.2 : 1.6}
      rx={0.4}
    />
  ))
}

/** Two short strokes across: this line stands for feed and return. */
export function Tick({ at: [x, y], upright }: { at: XY; upright: boolean }) {
  return (
    <path
      className="tick"
      d={`M-1.6 1.5L-0.4 -1.5M0.4 1.5L1.6 -1.5`}
      transform={`translate(${x} ${y})${upright ? ' rotate(90)' : ''}`}
    />
  )
}

/** A small triangle: trouble is never told by colour alone. */
export function Flag({ at: [x, y] }: { at: XY }) {
  return (
    <g className="flag" transform={`translate(${x} ${y})`}>
      <path d="M0 -2.2L2.2 1.7H-2.2Z" />
      <path className="bang" d="M0 -0.9V0.5M0 1.1V1.2" />
    </g>
  )
}
