import { conductorName, type DropAnswer, figure, partName, ruleSetOf, sourceWords } from '../../engine'
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { WhyLines } from './Why'

/** The worst drop among the loads that are fed through a conductor, and what it takes of it. */
export function RunDrop({ conductor }: { conductor: string }) {
  const design = useOpen((s) => s.design)
  const answers = useLatest((s) => s.answers)
  const worst = answers && worstThrough([...answers.drops.values()], conductor)
  if (!worst) return null
  const { part, drop, limitPercent, service, own } = worst
  const limit = ruleSetOf(design)?.dropPercent[service]
  return (
    <>
      <dt>Voltage drop</dt>
      <dd>
        <WhyLines
          head={
            <>
              <b className={drop.percent > limitPercent ? 'beyond' : ''}>{figure(drop.percent, '%')}</b>
              <small>
                {' '}
                of {figure(drop.ofV, 'V')} at {partName(design, part)}, {figure(limitPercent, '%')} allowed;
                it takes {figure(own, 'V')}
              </small>
            </>
          }
          lines={[
            ...drop.conductors.map(
              (c) => `${conductorName(design, c.conductor)} takes ${figure(c.volts, 'V')}`,
            ),
            `Fuses, contacts and shunts take ${figure(drop.devicesV, 'V')}; they are not counted in the limit`,
            ...(limit ? [`${figure(limitPercent, '%')}: ${sourceWords(limit.source, limit.confirmed)}`] : []),
          ]}
        />
      </dd>
    </>
  )
}

function worstThrough(drops: readonly DropAnswer[], conductor: string) {
  const found = drops.flatMap(({ part, drop, limitPercent, service }) => {
    const own = 'value' in drop && drop.value.conductors.find((c) => c.conductor === conductor)
    return own && 'value' in drop ? [{ part, drop: drop.value, limitPercent, service, own: own.volts }] : []
  })
  return found.sort((a, b) => b.drop.percent / b.limitPercent - a.drop.percent / a.limitPercent)[0]
}
