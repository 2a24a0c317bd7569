import { memo } from 'react'
import { ViewportPortal } from 'reactflow'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'
import { ConductorLine } from './ConductorLine'
import { isDrawn } from './drawn'
import { Labels } from './Labels'
import { LensFigures } from './LensFigures'
import { Ghosts, Outlines } from './Outlines'
import { Pen } from './Pen'
import { SheetTexts } from './SheetTexts'
import { PX } from './scale'
import { TrialFigures } from './TrialFigures'

/** All conductors of the view in one drawing under the parts, and the labels of the layout. */
export const ConductorLayer = memo(function ConductorLayer() {
  const conductors = useOpen((s) => s.design.conductors)
  const view = useView((s) => s.view)
  const scene = useLatest((s) => s.scene)
  const laidOut = useLatest((s) => s.laidOut)
  const runs = useLatest((s) => s.answers?.runs)
  return (
    <ViewportPortal>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: each conductor can be reached by Find and in the lists */}
      <svg className="conductors" style={{ transform: `scale(${PX})` }} aria-hidden>
        <Outlines />
        {conductors
          .filter((c) => isDrawn(c, view, runs?.get(c.id)?.nature, scene, laidOut))
          .map((c) => (
            <ConductorLine key={c.id} conductor={c} />
          ))}
        {scene?.joins.map(([x, y]) => (
          <circle key={`${x} ${y}`} className="join" cx={x} cy={y} r={0.9} />
        ))}
        <Labels />
        <SheetTexts />
        <Ghosts />
        <LensFigures />
        <TrialFigures />
      </svg>
      <Pen />
    </ViewportPortal>
  )
})
