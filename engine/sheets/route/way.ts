import { BEND, CORNER, CROSS, type Lattice, LEVEL, STEP, STUB, stride, UPRIGHT, WALL } from './lattice'
import { search, type Target, type Way } from './search'
import type { Line, Sheet } from './sheet'
import type { Terminal } from './terminal'

/** Ways on the sheet as it is: found, looked at and priced. */

export const targetOf = (t: Terminal): Target => ({ nodes: t.exits, axis: t.axis })

/** Cheapest free way, on every second lattice line if there is one, otherwise on all; null: there is none. */
export function freeWay(s: Sheet, start: Target, goal: Target): Way | null {
  const usual = isEven(s.lattice, start) && isEven(s.lattice, goal)
  return (
    (usual ? search(s.finder, start, goal, { step: 2 }) : null) ?? search(s.finder, start, goal, { step: 1 })
  )
}

/** A free way that costs less than this; only on the lattice lines that `freeWay` would use. */
export function betterWay(s: Sheet, start: Target, goal: Target, below: number): Way | null {
  const step = isEven(s.lattice, start) && isEven(s.lattice, goal) ? 2 : 1
  return search(s.finder, start, goal, { step, below })
}

const isEven = (l: Lattice, t: Target): boolean =>
  t.nodes.every((n) => (n % l.cols) % 2 === 0 && Math.floor(n / l.cols) % 2 === 0)

/** Is the way free but for crossings straight over? The exits at both ends are its own. */
export function isFree(l: Lattice, corners: readonly number[]): boolean {
  return everyStep(l, corners, (node, axis, isCorner) => {
    const bits = l.bits[node]!
    if (bits & STUB) return node === corners[0] || node === corners.at(-1)
    const taken = isCorner ? LEVEL | UPRIGHT | CORNER : (axis === 0 ? LEVEL : UPRIGHT) | CORNER
    return (bits & (taken | WALL)) === 0
  })
}

/** Visits the nodes of a way, corners twice; stops and is false where the visitor says false. */
export function everyStep(
  l: Lattice,
  corners: readonly number[],
  visit: (node: number, axis: 0 | 1, isCorner: boolean) => boolean,
): boolean {
  for (let i = 1; i < corners.length; i++) {
    const [a, b] = [corners[i - 1]!, corners[i]!]
    const step = stride(l, a, b)
    const axis = step === 1 || step === -1 ? 0 : 1
    for (let node = a; ; node += step) {
      if (!visit(node, axis, node === a || node === b)) return false
      if (node === b || step === 0) break
    }
  }
  return true
}

/** What a way of this line costs where it lies or would lie: length, nearness, bends and crossings. */
export function costOf({ lattice: l }: Sheet, { from, to }: Line, corners: readonly number[]): number {
  const axisOf = (a: number, b: number): number => (Math.abs(stride(l, a, b)) === 1 ? 0 : 1)
  const isAside = (axis: number, a: number | undefined, b: number | undefined): boolean =>
    a !== undefined && b !== undefined && axisOf(a, b) !== axis
  return (
    2 * STEP * Math.max(0, from.exits.indexOf(corners[0]!)) +
    (isAside(from.axis, corners[0], corners[1]) ? BEND : 0) +
    (isAside(to.axis, corners.at(-1), corners.at(-2)) ? BEND : 0) +
    stretchCost(l, corners)
  )
}

/** The same for the stretches between these corners alone. */
export function stretchCost(l: Lattice, corners: readonly number[]): number {
  let cost = Math.max(0, corners.length - 2) * BEND
  for (let i = 1; i < corners.length; i++) {
    const [a, b] = [corners[i - 1]!, corners[i]!]
    const step = stride(l, a, b)
    const axis = step === 1 || step === -1 ? 0 : 1
    for (let node = a; node !== b; ) {
      node += step
      const across = l.bits[node]! & (axis === 0 ? UPRIGHT : LEVEL)
      cost += l.toll[axis][node]! + (node !== b && across ? CROSS : 0)
    }
  }
  return cost
}
