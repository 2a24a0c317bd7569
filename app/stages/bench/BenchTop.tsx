import { useMemo, useState } from 'react'
import {
  type BenchCard,
  benchProgress,
  type Design,
  differencesOf,
  keptAside,
  unsettledOf,
} from '../../../engine'
import { useOpen } from '../../store/open'
import { FindNumber } from './FindNumber'
import { type BenchView, showView, useLooking } from './looking'
import { OtherDevice } from './OtherDevice'
import { ProgressBar } from './ProgressBar'

/** What was built otherwise, recorded differently, or has left the drawing. */
const toLookAt = (design: Design): number =>
  new Set([...differencesOf(design), ...unsettledOf(design)].map((d) => `${d.conductor} ${d.fact.what}`))
    .size + keptAside(design).length

/** How far the work is, any conductor by its number, and what else there is to look at. */
export function BenchTop({ cards }: { cards: readonly BenchCard[] }) {
  const design = useOpen((s) => s.design)
  const view = useLooking((s) => s.view)
  const [other, setOther] = useState(false)
  const otherwise = useMemo(() => toLookAt(design), [design])
  const views: readonly (readonly [BenchView, string])[] = [
    ['conductor', 'Conductor'],
    ['list', 'List'],
    ['otherwise', otherwise === 0 ? 'Built otherwise' : `Built otherwise (${otherwise})`],
  ]
  return (
    <header className="bench-top">
      <ProgressBar progress={benchProgress(cards)} whole />
      <FindNumber cards={cards} />
      <nav className="bench-views" aria-label="On this page">
        {views.map(([key, words]) => (
          <button
            key={key}
            type="button"
            className={`${key}${key === 'otherwise' && otherwise > 0 ? ' some' : ''}`}
            aria-current={view === key ? 'true' : undefined}
            onClick={() => showView(key)}
          >
            {words}
          </button>
        ))}
        <button type="button" onClick={() => setOther(true)}>
          Merge a file
        </button>
      </nav>
      {other && <OtherDevice onClose={() => setOther(false)} />}
    </header>
  )
}
