import { memo } from 'react'
import { ViewportPortal } from 'reactflow'
import type { Conductor, SceneView } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { ConductorLine } from './ConductorLine'
import { Labels } from './Labels'
import { PX } from './scale'

/** All conductors of the view in one drawing under the parts, and the labels of the layout. */
export const ConductorLayer = memo(function ConductorLayer() {
  const conductors = useOpen((s) => s.design.conductors)
  const view = useView((s) => s.view)
  const joins = useLatest((s) => s.scene?.joins)
  const runs = useLatest((s) => s.answers?.runs)
  return (
    <ViewportPortal>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: each conductor can be reached by Find and in the lists */}
      <svg className="conductors" style={{ transform: `scale(${PX})` }} aria-hidden>
        {conductors
          .filter((c) => inView(c, view, runs?.get(c.id)?.nature))
          .map((c) => (
            <ConductorLine key={c.id} conductor={c} />
          ))}
        {joins?.map(([x, y]) => (
          <circle key={`${x} ${y}`} className="join" cx={x} cy={y} r={0.9} />
        ))}
        <Labels />
      </svg>
    </ViewportPortal>
  )
})

/** The single-line view leaves out returns that a feed stands for; the data view shows data links only. */
function inView(c: Conductor, view: SceneView, nature: string | undefined): boolean {
  if (view === 'single-line') return c.returnOf === null
  if (view === 'data') return nature === 'data'
  return true
}
