/** How well typed words suit a text, 0 best; null: not at all. Every word must begin a word of the text or lie in it. */
export function rank(typed: string, text: string): number | null {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean)
  const target = text.toLowerCase()
  let score = 0
  for (const word of words) {
    const at = target.indexOf(word)
    if (at < 0) return null
    const begins = at === 0 || /[^a-z0-9]/.test(target[at - 1]!)
    score += (begins ? 0 : 50) + at
  }
  return score
}

/** Those that fit, the best first; equal ones stay in order. */
export function matching<T>(typed: string, items: readonly T[], textOf: (item: T) => string): readonly T[] {
  return items
    .map((item) => ({ item, score: rank(typed, textOf(item)) }))
    .filter((x): x is { item: T; score: number } => x.score !== null)
    .sort((a, b) => a.score - b.score)
    .map(({ item }) => item)
}
