import type { XY } from '../../engine'
import { LookLine } from '../lenses/LookLine'
import { arrowsOn, type Flow } from './flow'

/** A conductor in use: its weight by the current, and dashes that run with it; arrows where nothing may move. */
export function FlowLine({ flow, points, d }: { flow: Flow; points: readonly XY[]; d: string }) {
  const { look, amps, forward, pace } = flow
  return (
    <>
      <LookLine look={look} d={d} />
      {amps > 0 && (
        <>
          <path
            className={`running ${pace} ${forward ? 'forward' : 'against'}`}
            d={d}
            style={{ strokeWidth: look.widthMm + 0.6 }}
          />
          <path className="arrows" d={arrowsOn(points, forward, look.widthMm)} />
        </>
      )}
    </>
  )
}
