import { behindOf } from './behind'
import type { Prepared } from './prepare'
import type { CutMember } from './protection'

/**
 * The protective devices that stand first behind a conductor, on the side away from the end that a source reaches: what
 * they let through together is the most that a fault behind them can put through it for long. Where a battery stands on
 * that side as well it bears its part of the sum, and only the greatest device counts. NaN: one has no rating.
 * O(what lies between).
 */
export function devicesBehind(p: Prepared, branch: number, reached: 'from' | 'to'): readonly CutMember[] {
  const far = (reached === 'from' ? p.graph.head : p.graph.tail)[branch]!
  const { battery, barriers } = behindOf(p).from([far], branch, (e) => p.isFuse[e] === 1)
  const members = barriers.map((e) => ({
    kind: 'fuse' as const,
    id: p.form.branches[e]!.id,
    amps: p.rating[e]!,
  }))
  return battery ? members.sort((a, b) => (b.amps || 0) - (a.amps || 0)).slice(0, 1) : members
}
