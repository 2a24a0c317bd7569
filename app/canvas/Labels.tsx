import { memo } from 'react'
import { type ConductorId, conductorById, type PartId, partById, type SceneLabel } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { Marks } from '../symbols/Marks'
import { linePath } from '../symbols/shape'

/** The labels of the newest layout. A part's label goes with it; a conductor's hides while its ends move. */
export const Labels = memo(function Labels() {
  const labels = useLatest((s) => s.scene?.labels)
  return labels?.map((label, i) =>
    'part' in label.of ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: labels are replaced whole with each layout
      <PartLabel key={i} label={label} part={label.of.part} />
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: labels are replaced whole with each layout
      <RunLabel key={i} label={label} run={label.of.conductor} />
    ),
  )
})

const PartLabel = memo(function PartLabel({ label, part }: { label: SceneLabel; part: PartId }) {
  const now = useOpen((s) => partById(s.design, part))
  const moved = useView((s) => s.moving.get(part))
  const before = useLatest((s) => s.laidOut && partById(s.laidOut, part))
  if (!now || !before) return null
  const [x, y] = moved ?? [now.x, now.y]
  return <Drawn label={label} dx={x - before.x} dy={y - before.y} />
})

const RunLabel = memo(function RunLabel({ label, run }: { label: SceneLabel; run: ConductorId }) {
  const stands = useOpen((s) => {
    const { laidOut } = useLatest.getState()
    const c = conductorById(s.design, run)
    if (!laidOut || !c) return false
    return [c.from.part, c.to.part].every((id) => {
      const now = partById(s.design, id)
      const then = partById(laidOut, id)
      return now && then && now.x === then.x && now.y === then.y && now.turn === then.turn
    })
  })
  const moving = useView((s) => {
    if (s.moving.size === 0) return false
    const c = conductorById(useOpen.getState().design, run)
    return c !== undefined && (s.moving.has(c.from.part) || s.moving.has(c.to.part))
  })
  return stands && !moving ? <Drawn label={label} dx={0} dy={0} /> : null
})

function Drawn({ label, dx, dy }: { label: SceneLabel; dx: number; dy: number }) {
  return (
    <g className="label" transform={`translate(${dx} ${dy})`}>
      {label.leader && <path className="leader" d={linePath(label.leader)} />}
      <g transform={`translate(${label.x} ${label.y})${label.turn ? ' rotate(-90)' : ''}`}>
        <Marks marks={label.marks} />
      </g>
    </g>
  )
}
