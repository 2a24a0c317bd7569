import { CORNER, LEVEL, UPRIGHT } from './lattice'
import { place, type Sheet, takeOff } from './sheet'
import { betterWay, costOf, everyStep, targetOf } from './way'

/**
 * Lays loose lines anew, one by one among all others, where that is cheaper; the dearest first. The second round
 * looks only at lines that cross one that has changed, and so on. Never makes the sum worse.
 */
export function improve(s: Sheet, rounds: number): void {
  let wanted = s.lines.map((_, i) => i)
  for (let round = 0; round < rounds && wanted.length > 0; round++) {
    const order = wanted.filter((i) => s.lines[i]!.isLoose && s.lines[i]!.corners.length > 2)
    const worth = new Map(order.map((i) => [i, costOf(s, s.lines[i]!, s.lines[i]!.corners)]))
    order.sort((a, b) => worth.get(b)! - worth.get(a)! || a - b)
    const touched = new Set<number>()
    for (const i of order) {
      const crossed = crossedBy(s, i)
      if (relay(s, i)) for (const other of [...crossed, ...crossedBy(s, i)]) touched.add(other)
    }
    wanted = [...touched].sort((a, b) => a - b)
  }
}

/** Lines that cross line `i`. */
function crossedBy(s: Sheet, i: number): number[] {
  const { bits, owner } = s.lattice
  const found: number[] = []
  everyStep(s.lattice, s.lines[i]!.corners, (node, axis) => {
    if ((bits[node]! & (LEVEL | UPRIGHT | CORNER)) === (LEVEL | UPRIGHT)) found.push(owner[1 - axis]![node]!)
    return true
  })
  return found
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
