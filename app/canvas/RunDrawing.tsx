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
import { laidOutSeen, useSeen } from '../store/seen'
import { select, toggleConductor, useView } from '../store/view'
import { linePath } from '../symbols/shape'
import { FlowLine } from '../tryit/FlowLine'
import { useFlow } from '../tryit/flowing'
import { type End, wayOf } from './follow'
import { takeHold } from './pulling'
import { Flag, Grips, Tick } from './RunMarks'
import { useRunTrouble } from './trouble'

interface RunDrawingProps {
  readonly conductor: Conductor
  /** How far each end is from where the design has it, mm; absent: it stands. */
  readonly fromBy?: XY | undefined
  readonly toBy?: XY | undefined
  /** The way to draw, mm; absent: as it was laid, as far as that still fits. */
  readonly way?: readonly XY[] | undefined
}

/** One conductor on the sheet, with a wide unseen line to catch the pointer. */
export const RunDrawing = memo(function RunDrawing({ conductor, fromBy, toBy, way }: RunDrawingProps) {
  const { id, from, to } = conductor
  const fromPart = useSeen((s) => partById(s, from.part))
  const toPart = useSeen((s) => partById(s, to.part))
  const laid = useLatest((s) => laidOf(s.scene, id))
  const selected = useView((s) => s.conductors.has(id))
  const trouble = useRunTrouble(id)
  const painted = usePainted(id, laid?.withReturn ?? null)
  const flow = useFlow(id, laid?.withReturn ?? null)
  const nature = useLatest((s) => s.answers?.runs.get(id)?.nature) ?? laid?.nature ?? 'other'

  const a = endOf(fromPart, from, fromBy)
  const b = endOf(toPart, to, toBy)
  if (!a || !b) return null
  const laidOut = laidOutSeen()
  const follows = wayOf(laid, a, b, (p) => (laidOut ? partById(laidOut, p) : undefined))
  const points = way ?? follows.points
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
      {selected && follows.exact && <Grips points={points} />}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: by keyboard, Find and the lists reach every conductor */}
      <path
        className={selected ? 'catch nopan' : 'catch'}
        d={d}
        onPointerDown={(e) => follows.exact && !flow && takeHold(e, id)}
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

function endOf(part: Part | undefined, ref: TerminalRef, [dx, dy]: XY = [0, 0]): End | null {
  const { conductors } = useOpen.getState().design
  const terminal = part && terminalsOf(part, conductors).find((t) => t.key === ref.terminal)
  if (!part || !terminal) return null
  return {
    part,
    at: [part.x + dx, part.y + dy],
    terminal: [terminal.x + dx, terminal.y + dy],
    side: terminal.side,
  }
}
