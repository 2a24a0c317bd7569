import { memo, type ReactNode, useMemo } from 'react'
import { type Conductor, conductorById, type PartId } from '../../engine'
import { useGhosts, useHand, useMotion, useWays } from '../store/hand'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useDrawn } from './drawn'
import { PartWords } from './Labels'
import { useLettering } from './lettering'
import { RunDrawing } from './RunDrawing'
import { PX } from './scale'

/** Everything that moves with the hand, in a drawing of its own, so that the one at rest is not painted again. */
export const Carried = memo(function Carried() {
  const parts = useHand((s) => s.parts)
  const pulled = useHand((s) => s.conductor)
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: it is part of the drawing
    <svg className="conductors carried" style={{ transform: `scale(${PX})` }} aria-hidden>
      {parts.size > 0 && <WithParts parts={parts} />}
      {pulled !== null && <Pulled id={pulled} />}
      <Ghosts />
    </svg>
  )
})

/** Conductors of the carried parts, and their words. */
function WithParts({ parts }: { parts: ReadonlySet<PartId> }) {
  const drawn = useDrawn()
  const labels = useLatest((s) => s.scene?.labels)
  const zoom = useLettering()
  const { along, stretched } = useMemo(() => {
    const along: Conductor[] = []
    const stretched: Conductor[] = []
    for (const c of drawn) {
      const ends = Number(parts.has(c.from.part)) + Number(parts.has(c.to.part))
      if (ends === 2) along.push(c)
      else if (ends === 1) stretched.push(c)
    }
    return { along, stretched }
  }, [drawn, parts])
  return (
    <>
      <Shifted>
        {along.map((c) => (
          <RunDrawing key={c.id} conductor={c} />
        ))}
        {labels?.map((label, i) =>
          'part' in label.of && parts.has(label.of.part) ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: labels are replaced whole with each layout
            <PartWords key={i} label={label} part={label.of.part} zoom={zoom} />
          ) : null,
        )}
      </Shifted>
      {stretched.map((c) => (
        <Stretched key={c.id} conductor={c} fromMoves={parts.has(c.from.part)} />
      ))}
    </>
  )
}

/** As far from its place as the hand has come. */
function Shifted({ children }: { children: ReactNode }) {
  const [dx, dy] = useMotion((s) => s.by)
  return <g transform={`translate(${dx} ${dy})`}>{children}</g>
}

function Stretched({ conductor, fromMoves }: { conductor: Conductor; fromMoves: boolean }) {
  const by = useMotion((s) => s.by)
  const routed = useWays((s) => (s.by === by ? s.ways.get(conductor.id) : undefined))
  return (
    <RunDrawing
      conductor={conductor}
      fromBy={fromMoves ? by : undefined}
      toBy={fromMoves ? undefined : by}
      way={routed}
    />
  )
}

function Pulled({ id }: { id: string }) {
  const conductor = useOpen((s) => conductorById(s.design, id))
  const line = useMotion((s) => s.line)
  return conductor ? <RunDrawing conductor={conductor} way={line} /> : null
}

/** Rectangles as they would be if the hand let go now. */
function Ghosts() {
  const boxes = useGhosts((s) => s.boxes)
  return boxes.map(({ x, y, w, h }, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: replaced whole with each step of the hand
    <rect key={i} className="ghost" x={x} y={y} width={w} height={h} />
  ))
}
