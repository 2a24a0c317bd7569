import { CORNER, LEVEL, UPRIGHT } from './lattice'
import { place, type Sheet, takeOff } from './sheet'
import { betterWay, costOf, everyStep, targetOf } from './way'

/**
 * Two lines that cross each other twice or more need not cross, or once only: both are taken off and laid the other
 * way round, and that is kept where it is cheaper.
 */
export function untangle(s: Sheet): void {
  for (const [a, b] of tangles(s)) {
    const [one, two] = [s.lines[a]!, s.lines[b]!]
    const before = [one.corners, two.corners] as const
    takeOff(s, a)
    const cost = costOf(s, two, before[1])
    takeOff(s, b)
    const worth = cost + costOfBeside(s, a, b, before)
    if (relay(s, [b, a], worth) || relay(s, [a, b], worth)) continue
    place(s, a, before[0])
    place(s, b, before[1])
  }
}

/** Cost of line `a` where it lay, with line `b` where it lay. */
function costOfBeside(s: Sheet, a: number, b: number, before: readonly [number[], number[]]): number {
  place(s, b, before[1])
  const cost = costOf(s, s.lines[a]!, before[0])
  takeOff(s, b)
  return cost
}

function relay(s: Sheet, order: readonly [number, number], below: number): boolean {
  const [first, second] = order
  const way = betterWay(s, targetOf(s.lines[first]!.from), targetOf(s.lines[first]!.to), below)
  if (!way) return false
  place(s, first, way.corners)
  const next = betterWay(s, targetOf(s.lines[second]!.from), targetOf(s.lines[second]!.to), below - way.cost)
  if (next) place(s, second, next.corners)
  else takeOff(s, first)
  return next !== null
}

/** Pairs of loose lines that cross each other more than once. */
function tangles(s: Sheet): [number, number][] {
  const { bits, owner } = s.lattice
  const times = new Map<number, number>()
  s.lines.forEach((line, i) => {
    if (!line.isLoose) return
    everyStep(s.lattice, line.corners, (node, axis) => {
      if (axis === 0 && (bits[node]! & (LEVEL | UPRIGHT | CORNER)) === (LEVEL | UPRIGHT)) {
        const other = owner[1][node]!
        const key = Math.min(i, other) * s.lines.length + Math.max(i, other)
        if (s.lines[other]!.isLoose) times.set(key, (times.get(key) ?? 0) + 1)
      }
      return true
    })
  })
  return [...times]
    .filter(([, n]) => n > 1)
    .map(([key]) => [Math.floor(key / s.lines.length), key % s.lines.length])
}
