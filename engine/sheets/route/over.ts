import { CORNER, LEVEL, STUB, UPRIGHT } from './lattice'
import { search } from './search'
import type { Sheet } from './sheet'
import { everyStep, targetOf } from './way'

/**
 * Cheapest way of line `i` where it may lie on other lines, each step on one at the price that `dear` gives for its
 * number; with the lines that it would have to push aside. null: none that costs less than `below`.
 */
export function wayOver(
  s: Sheet,
  i: number,
  dear: (line: number) => number,
  below: number,
): { corners: number[]; others: Set<number> } | null {
  const { bits, owner } = s.lattice
  const over = (node: number): number => {
    const [level, upright] = [owner[0][node]!, owner[1][node]!]
    return (level < 0 ? 0 : dear(level)) + (upright < 0 || upright === level ? 0 : dear(upright))
  }
  const line = s.lines[i]!
  const way = search(s.finder, targetOf(line.from), targetOf(line.to), { step: 1, over, below })
  if (!way) return null
  const others = new Set<number>()
  everyStep(s.lattice, way.corners, (node, axis, isCorner) => {
    const b = bits[node]!
    if (b & STUB) return true
    if (isCorner || b & CORNER) {
      others.add(owner[0][node]!)
      others.add(owner[1][node]!)
    } else if (b & (axis === 0 ? LEVEL : UPRIGHT)) others.add(owner[axis][node]!)
    return true
  })
  others.delete(-1)
  return { corners: way.corners, others }
}
