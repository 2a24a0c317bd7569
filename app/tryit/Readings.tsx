import { figure, partName } from '../../engine'
import type { Trial } from './trial'

/** What the shunts show beside what is true, and where the power goes. */
export function Readings({ trial: { design, point } }: { trial: Trial }) {
  if (!point.ok) return <h2>No operating point</h2>
  const { batteries, sources, loads, converters, ways } = point.power
  return (
    <section className="readings" aria-label="Readings">
      {point.shunts.size > 0 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Shunt</th>
              <th scope="col">shows</th>
              <th scope="col">truly</th>
              <th scope="col">off by</th>
            </tr>
          </thead>
          <tbody>
            {[...point.shunts].map(([id, { shows, truth, off }]) => (
              <tr key={id} className={isOff(off) ? 'wrong' : ''}>
                <th scope="row">{partName(design, id)}</th>
                <td>{figure(near(shows), 'A')}</td>
                <td>{figure(near(truth), 'A')}</td>
                <td>{isOff(off) ? figure(off, 'A') : '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <dl>
        <dt>{batteries >= 0 ? 'Batteries give' : 'Batteries take'}</dt>
        <dd>{figure(Math.abs(near(batteries)), 'W')}</dd>
        <dt>Sources give</dt>
        <dd>{figure(near(sources), 'W')}</dd>
        <dt>Loads take</dt>
        <dd>{figure(near(loads), 'W')}</dd>
        <dt>Lost on the way</dt>
        <dd>{figure(near(converters + ways), 'W')}</dd>
      </dl>
    </section>
  )
}

/** Less than this, A, is rounding. */
const isOff = (amps: number): boolean => Math.abs(amps) >= 0.01
const near = (x: number): number => (Math.abs(x) < 0.005 ? 0 : x)
