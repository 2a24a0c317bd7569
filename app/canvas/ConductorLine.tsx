import { memo } from 'react'
import {
  type Conductor,
  type Part,
  partById,
  type TerminalRef,
  terminalsOf,
  tickAt,
  type XY,
} from '../../engine'
import { LookLine } from '../lenses/LookLine'
import { usePainted } from '../lenses/painted'
import { laidOf } from '../store/laid'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { select, toggleConductor, useView } from '../store/view'
import { linePath } from '../symbols/shape'
import { FlowLine } from '../tryit/FlowLine'
import { useFlow } from '../tryit/flowing'
import { type End, wayOf } from './follow'
import { takeHold } from './pulling'
import { gripsOf } from './segments'
import { useRunTrouble } from './trouble'

/** One conductor on the sheet, with a wide unseen line to catch the pointer. */
export const ConductorLine = memo(function ConductorLine({ conductor }: { conductor: Conductor }) {
  const { id, from, to } = conductor
  const fromPart = useOpen((s) => partById(s.design, from.part))
  const toPart = useOpen((s) => partById(s.design, to.part))
  const laid = useLatest((s) => laidOf(s.scene, id))
  const fromAt = useView((s) => s.moving.get(from.part))
  const toAt = useView((s) => s.moving.get(to.part))
  const selected = useView((s) => s.conductors.has(id))
  const pulled = useView((s) => (s.pulled?.conductor === id ? s.pulled.points : null))
  const trouble = useRunTrouble(id)
  const painted = usePainted(id, laid?.withReturn ?? null)
  const flow = useFlow(id, laid?.withReturn ?? null)
  const nature = useLatest((s) => s.answers?.runs.get(id)?.nature) ?? laid?.nature ?? 'other'

  const a = endOf(fromPart, from, fromAt)
  const b = endOf(toPart, to, toAt)
  if (!a || !b) return null
  const { laidOut } = useLatest.getState()
  const way = wayOf(laid, a, b, (p) => (laidOut ? partById(laidOut, p) : undefined))
  const points = pulled ?? way.points
  const d = linePath(points)
  const { at, upright } = tickAt({ points })
  return (
    <g
      className={`run ${painted || flow ? 'painted' : nature}${selected ? ' selected' : ''}${trouble ? ` trouble ${trouble}` : ''}`}
      data-conductor={id}
      data-number={conductor.number}
    >
      {(selected || (trouble && !painted && !flow)) && <path className="halo" d={d} />}
      {flow ? (
        <FlowLine flow={flow} points={points} d={d} />
      ) : painted ? (
        <LookLine look={painted.look} d={d} />
      ) : (
        <>
          <path className="line" d={d} />
          {nature === 'negative' && <path className="core" d={d} />}
          {laid?.withReturn && <Tick at={at} upright={upright} />}
          {trouble && <Flag at={at} />}
        </>
      )}
      {selected && way.exact && <Grips points={points} />}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: by keyboard, Find and the lists reach every conductor */}
      <path
        className={selected ? 'catch nopan' : 'catch'}
        d={d}
        onPointerDown={(e) => way.exact && !flow && takeHold(e, id)}
        onClick={(e) => {
          e.stopPropagation()
          if (useView.getState().trying) return
          if (e.shiftKey) toggleConductor(id)
          else select([], [id])
        }}
        onContextMenu={() => !selected && !useView.getState().trying && select([], [id])}
      />
    </g>
  )
})

function endOf(part: Part | undefined, ref: TerminalRef, moved: XY | undefined): End | null {
  const { conductors } = useOpen.getState().design
  const terminal = part && terminalsOf(part, conductors).find((t) => t.key === ref.terminal)
  if (!part || !terminal) return null
  const at: XY = moved ?? [part.x, part.y]
  return {
    part,
    at,
    terminal: [at[0] + terminal.x - part.x, at[1] + terminal.y - part.y],
    side: terminal.side,
  }
}

/** What the hand takes hold of: a short bar across each stretch that can be moved. */
function Grips({ points }: { points: readonly XY[] }) {
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
function Tick({ at: [x, y], upright }: { at: XY; upright: boolean }) {
  return (
    <path
      className="tick"
      d={`M-1.6 1.5L-0.4 -1.5M0.4 1.5L1.6 -1.5`}
      transform={`translate(${x} ${y})${upright ? ' rotate(90)' : ''}`}
    />
  )
}

/** A small triangle: trouble is never told by colour alone. */
function Flag({ at: [x, y] }: { at: XY }) {
  return (
    <g className="flag" transform={`translate(${x} ${y})`}>
      <path d="M0 -2.2L2.2 1.7H-2.2Z" />
      <path className="bang" d="M0 -0.9V0.5M0 1.1V1.2" />
    </g>
  )
}
