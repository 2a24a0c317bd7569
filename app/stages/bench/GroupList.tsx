import { useEffect, useRef } from 'react'
import { type BenchCard, type BenchGroup, benchProgress, type ConductorId, isFinished } from '../../../engine'
import { takeUp, useLooking } from './looking'
import { Orders } from './Orders'
import { ProgressBar } from './ProgressBar'
import { swatch } from './swatch'

interface Props {
  readonly groups: readonly BenchGroup[]
  readonly at: ConductorId | null
}

/** Every conductor in building order, group by group, with how far each is. */
export function GroupList({ groups, at }: Props) {
  const here = useRef<HTMLButtonElement>(null)
  const order = useLooking((s) => s.order)
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever another conductor is taken up, or the order changes
  useEffect(() => {
    here.current?.scrollIntoView({ block: 'nearest' })
  }, [at, order])
  return (
    <section className="bench-list" aria-label="Conductors in building order">
      <Orders />
      {groups.map(({ title, cards }) => (
        <div key={title} className="bench-group">
          <h2>
            {title}
            <ProgressBar progress={benchProgress(cards)} />
          </h2>
          <ul>
            {cards.map((card) => (
              <li key={card.conductor.id}>
                <button
                  ref={card.conductor.id === at ? here : undefined}
                  type="button"
                  aria-current={card.conductor.id === at ? 'true' : undefined}
                  onClick={() => takeUp(card.conductor.id)}
                >
                  <Row card={card} />
                </button>
              </li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  )
}

function Row({ card }: { card: BenchCard }) {
  const done = card.steps.filter((s) => s.state === 'done').length
  const again = card.steps.some((s) => s.state === 'again')
  const state = again ? 'again' : isFinished(card) ? 'finished' : ''
  return (
    <>
      <span className="swatch small" style={swatch(card.colour)}>
        {card.colour}
      </span>
      <b>{card.number}</b>
      <span className="size">{typeof card.size === 'string' ? card.size : 'no size'}</span>
      <span className={`state ${state}`}>
        {card.steps.length === 0
          ? '–'
          : again
            ? 'again'
            : isFinished(card)
              ? '✓ done'
              : `${done} of ${card.steps.length}`}
      </span>
      <span className="way">
        {card.from.part} → {card.to.part}
        {card.differences.length > 0 && <em> built otherwise</em>}
      </span>
    </>
  )
}
