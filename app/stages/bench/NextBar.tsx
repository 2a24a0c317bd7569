import { ArrowRight, ChevronLeft, ChevronRight } from 'lucide-react'
import { type BenchCard, type ConductorId, nextCard } from '../../../engine'

interface Props {
  readonly cards: readonly BenchCard[]
  readonly at: ConductorId
  readonly onTake: (id: ConductorId) => void
}

/** On to the next conductor that is not finished, with one big button; one back and one on beside it. */
export function NextBar({ cards, at, onTake }: Props) {
  const i = cards.findIndex((c) => c.conductor.id === at)
  const next = nextCard(cards, at)
  const step = (to: BenchCard | undefined) => to && onTake(to.conductor.id)
  return (
    <nav className="bench-next" aria-label="Through the conductors">
      <button
        type="button"
        className="plain"
        disabled={i <= 0}
        aria-label="One back"
        onClick={() => step(cards[i - 1])}
      >
        <ChevronLeft size={28} aria-hidden />
      </button>
      <button
        type="button"
        className="plain"
        disabled={i + 1 >= cards.length}
        aria-label="One on"
        onClick={() => step(cards[i + 1])}
      >
        <ChevronRight size={28} aria-hidden />
      </button>
      {next === null ? (
        <p className="all-done">Every conductor is finished.</p>
      ) : next.conductor.id === at ? (
        <p className="all-done">This is the last one with something left to do.</p>
      ) : (
        <button type="button" className="main next" onClick={() => onTake(next.conductor.id)}>
          Next conductor: {next.number} <ArrowRight size={28} aria-hidden />
        </button>
      )}
    </nav>
  )
}
