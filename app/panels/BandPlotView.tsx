import { useMemo } from 'react'
import { BAND_PLOT_MM, bandPlotMarks, fuseBandPlot, sourceWords } from '../../engine'
import { useLatest } from '../store/latest'
import { Marks } from '../symbols/Marks'

/** When the slowest device that guards a conductor opens, what the copper bears, and the currents it must tell apart. */
export function BandPlotView({ conductor }: { conductor: string }) {
  const checked = useLatest((s) => s.checked)
  const answers = useLatest((s) => s.answers)
  const plot = useMemo(
    () => (checked && answers ? fuseBandPlot(checked, answers, conductor) : null),
    [checked, answers, conductor],
  )
  if (!checked || !plot) return null
  return (
    <figure className="band-plot">
      <svg viewBox={`0 0 ${BAND_PLOT_MM.w} ${BAND_PLOT_MM.h}`} role="img" aria-label="Time and current">
        <Marks marks={bandPlotMarks(checked, plot)} />
      </svg>
      <figcaption>
        Tinted: between surely holding and surely open. Limits:{' '}
        {sourceWords(plot.band.source, plot.band.confirmed)}
      </figcaption>
    </figure>
  )
}
