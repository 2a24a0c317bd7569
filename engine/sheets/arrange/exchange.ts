import type { Millimetres } from '../../units'
import { otherEnd, otherY, ownY, type Plan } from './graph'
import { type Stack, snapUp } from './stack'

/** Rounds at most: each takes at least one crossing away, and there are few to take. */
const ROUNDS = 12

/**
 * Exchanges neighbours of a column where fewer links then cross, by the heights of the terminals at their far ends:
 * so parts stand in the order of the studs and ways that they hang on. True where anything changed.
 * Greedy switching: P. Eades and D. Kelly, 1986. O(rounds × pairs of links of neighbours).
 */
export function exchange(
  plan: Plan,
  s: Stack,
  column: number[],
  sideOf: (other: number) => 'left' | 'right' | null,
): boolean {
  let changed = false
  for (let round = 0; round < ROUNDS; round++) {
    let any = false
    for (let k = 0; k + 1 < column.length; k++) {
      const [a, b] = [column[k]!, column[k + 1]!]
      if (crossings(plan, s, a, b, sideOf) <= crossings(plan, s, b, a, sideOf)) continue
      column[k] = b
      column[k + 1] = a
      stackAgain(plan, s, a, b)
      any = true
      changed = true
    }
    if (!any) break
  }
  return changed
}

/** How often links of `upper` cross those of `lower` while it stands above that one. */
function crossings(
  plan: Plan,
  s: Stack,
  upper: number,
  lower: number,
  sideOf: (other: number) => 'left' | 'right' | null,
): number {
  const ends = (part: number) =>
    plan.at[part]!.flatMap((l) => {
      const far = otherEnd(l, part)
      const side = sideOf(far)
      return side ? [{ side, far: s.top.get(far)! + otherY(l, part), own: ownY(l, part) }] : []
    })
  const below = ends(lower)
  let count = 0
  for (const u of ends(upper)) for (const l of below) if (u.side === l.side && u.far > l.far) count++
  return count
}

/** The lower of two neighbours goes where the upper one began, and that one below it. */
function stackAgain(plan: Plan, s: Stack, upper: number, lower: number): void {
  const top: Millimetres = s.top.get(upper)!
  s.top.set(lower, top)
  s.top.set(upper, top + snapUp(plan.parts[lower]!.h + s.gap(lower)))
}
