import { betterWay, costOf, place, type Sheet, takeOff, targetOf } from './sheet'

/**
 * Lays loose lines anew, one by one among all others, where that is cheaper; those with the most crossings and
 * detours first. Stops when a round changes nothing. Never makes the sum worse.
 */
export function improve(s: Sheet, rounds: number): void {
  for (let round = 0; round < rounds; round++) {
    const worth = s.lines.map((line) =>
      line.isLoose && line.corners.length > 2 ? costOf(s, line, line.corners) : 0,
    )
    const order = s.lines.map((_, i) => i).filter((i) => worth[i]! > 0)
    order.sort((a, b) => worth[b]! - worth[a]! || a - b)
    let changes = 0
    for (const i of order) if (relay(s, i)) changes++
    if (changes === 0) return
  }
}

function relay(s: Sheet, i: number): boolean {
  const line = s.lines[i]!
  const old = line.corners
  takeOff(s, i)
  const cost = costOf(s, line, old)
  const way = betterWay(s, targetOf(line.from), targetOf(line.to), cost)
  place(s, i, way?.corners ?? old)
  return way !== null
}
