import { conductorName, type DropAnswer, figure } from '../../engine'
import { useOpen } from '../store/open'
import { Amount } from './Amount'
import { WhyLines } from './Why'

/** Worst voltage drop to one load, out and return; behind "why?", what each conductor takes of it. */
export function DropRow({ drop: { drop, limitPercent } }: { drop: DropAnswer }) {
  const design = useOpen((s) => s.design)
  return (
    <>
      <dt>Voltage drop</dt>
      <dd>
        {'value' in drop ? (
          <WhyLines
            head={
              <>
                <b className={drop.value.percent > limitPercent ? 'beyond' : ''}>
                  {figure(drop.value.percent, '%')}
                </b>
                <small>
                  {' '}
                  of {figure(drop.value.ofV, 'V')}, {figure(limitPercent, '%')} allowed
                </small>
              </>
            }
            lines={[
              ...drop.value.conductors.map(
                (c) => `${conductorName(design, c.conductor)} takes ${figure(c.volts, 'V')}`,
              ),
              `Fuses, contacts and shunts take ${figure(drop.value.devicesV, 'V')}`,
            ]}
          />
        ) : (
          <Amount answer={drop} />
        )}
      </dd>
    </>
  )
}
