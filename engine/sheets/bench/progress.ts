import type { BenchCard } from './card'

export interface BenchProgress {
  /** Conductors of which every step is done, and those that have steps. */
  readonly finished: number
  readonly conductors: number
  readonly stepsDone: number
  readonly steps: number
  /** Steps to be looked at again, as the drawing has changed since. */
  readonly again: number
}

export const isFinished = ({ steps }: BenchCard): boolean =>
  steps.length > 0 && steps.every((s) => s.state === 'done')

/** How far the work on some conductors is. Mains has no steps and counts nowhere. */
export function benchProgress(cards: readonly BenchCard[]): BenchProgress {
  const steps = cards.flatMap((card) => card.steps)
  return {
    finished: cards.filter(isFinished).length,
    conductors: cards.filter((card) => card.steps.length > 0).length,
    stepsDone: steps.filter((s) => s.state === 'done').length,
    steps: steps.length,
    again: steps.filter((s) => s.state === 'again').length,
  }
}

/** The next conductor in building order with something left to do, after the one given; round to the first. null: all is done. */
export function nextCard(cards: readonly BenchCard[], after: string | null): BenchCard | null {
  const at = cards.findIndex((card) => card.conductor.id === after)
  const round = [...cards.slice(at + 1), ...cards.slice(0, at + 1)]
  return round.find((card) => card.steps.length > 0 && !isFinished(card)) ?? null
}

/** Conductors whose number holds what was typed: "12" finds W12 before W112 and W120. */
export function cardsNumbered(cards: readonly BenchCard[], typed: string): readonly BenchCard[] {
  const text = typed.trim().toUpperCase()
  if (text === '') return []
  const rank = ({ number }: BenchCard): number => {
    const upper = number.toUpperCase()
    if (upper === text || upper.replace(/^\D+/, '') === text) return 0
    return upper.startsWith(text) || upper.replace(/^\D+/, '').startsWith(text)
      ? 1
      : upper.includes(text)
        ? 2
        : 3
  }
  return cards
    .map((card) => ({ card, rank: rank(card) }))
    .filter((r) => r.rank < 3)
    .sort((a, b) => a.rank - b.rank)
    .map((r) => r.card)
}
