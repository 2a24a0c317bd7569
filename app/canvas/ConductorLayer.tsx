import { memo } from 'react'
import { ViewportPortal } from 'reactflow'
import { useLatest } from '../store/latest'
import { Carried } from './Carried'
import { ConductorLine } from './ConductorLine'
import { useDrawn } from './drawn'
import { Labels } from './Labels'
import { LensFigures } from './LensFigures'
import { Outlines } from './Outlines'
import { Pen } from './Pen'
import { SheetTexts } from './SheetTexts'
import { PX } from './scale'
import { TrialFigures } from './TrialFigures'

/** All conductors of the view in one drawing under the parts, and the labels of the layout. */
export const ConductorLayer = memo(function ConductorLayer() {
  const drawn = useDrawn()
  const joins = useLatest((s) => s.scene?.joins)
  return (
    <ViewportPortal>
      {/* biome-ignore lint/a11y/noSvgWithoutTitle: each conductor can be reached by Find and in the lists */}
      <svg className="conductors" style={{ transform: `scale(${PX})` }} aria-hidden>
        <Outlines />
        {drawn.map((c) => (
          <ConductorLine key={c.id} conductor={c} />
        ))}
        {joins?.map(([x, y]) => (
          <circle key={`${x} ${y}`} className="join" cx={x} cy={y} r={0.9} />
        ))}
        <Labels />
        <SheetTexts />
        <LensFigures />
        <TrialFigures />
      </svg>
      <Carried />
      <Pen />
    </ViewportPortal>
  )
})
