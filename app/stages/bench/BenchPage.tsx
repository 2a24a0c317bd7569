import '../../theme/bench.css'
import '../../theme/benchorders.css'
import '../../theme/benchlist.css'
import '../../theme/benchcard.css'
import '../../theme/benchends.css'
import '../../theme/benchsteps.css'
import '../../theme/benchbuilt.css'
import '../../theme/benchdiffer.css'
import '../../theme/benchnarrow.css'
import { useMemo } from 'react'
import { benchCards, benchGroups, nextCard } from '../../../engine'
import { useBuilt } from '../../store/built'
import { useLatest } from '../../store/latest'
import { useOpen } from '../../store/open'
import { BenchTop } from './BenchTop'
import { BuiltList } from './BuiltList'
import { ConductorCard } from './ConductorCard'
import { GroupList } from './GroupList'
import { takeUp, useLooking } from './looking'
import { NextBar } from './NextBar'
import { NothingHere } from './NothingHere'

/** The page of the bench: one conductor after the other in building order, ticked off with gloves on. */
export default function BenchPage() {
  const design = useOpen((s) => s.design)
  const drawn = useLatest((s) => s.answers)
  const failure = useLatest((s) => s.failure)
  const built = useBuilt((s) => s.built?.answers)
  const { order, view, at } = useLooking()

  const answers = built ?? drawn
  const cards = useMemo(() => (answers ? benchCards(design, answers) : []), [design, answers])
  const groups = useMemo(() => benchGroups(design, cards, order), [design, cards, order])
  const inOrder = useMemo(() => groups.flatMap((g) => g.cards), [groups])

  if (!answers)
    return (
      <main className="page waiting">
        {failure ? `The checks broke off: ${failure}` : 'Working out the figures…'}
      </main>
    )
  const card = cards.find((c) => c.conductor.id === at) ?? nextCard(inOrder, null) ?? inOrder[0]
  return (
    <main className={`page bench showing-${view}`}>
      <BenchTop cards={inOrder} />
      <GroupList groups={groups} at={card?.conductor.id ?? null} />
      {view === 'otherwise' ? (
        <BuiltList />
      ) : card ? (
        <section className="bench-hand" aria-label="Conductor">
          <ConductorCard key={card.conductor.id} card={card} />
          <NextBar cards={inOrder} at={card.conductor.id} onTake={takeUp} />
        </section>
      ) : (
        <NothingHere />
      )}
    </main>
  )
}
