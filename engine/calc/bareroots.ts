import type { ConductorId } from '../model/design'
import type { Answer, EndAnswer, RunAnswer } from './answers'

type Runs = ReadonlyMap<ConductorId, Pick<RunAnswer, 'verdict' | 'cause' | 'from' | 'to'>>

/**
 * Conductors without protection, by the one at which a missing device is to be fitted for all of them: the first
 * unprotected conductor on the way from the source. One that starts at an unlimited source is a root by itself. A root
 * comes first among its own. O(conductors + ways).
 */
export function bareRoots(runs: Runs): Map<ConductorId, ConductorId[]> {
  const bare = new Set([...runs].flatMap(([id, run]) => (isBare(run) ? [id] : [])))
  const above = (id: ConductorId): ConductorId => {
    const run = runs.get(id)!
    if (startsAtSource(run.from) || startsAtSource(run.to)) return id
    return run.cause?.way.find((w) => bare.has(w)) ?? id
  }
  const roots = new Map<ConductorId, ConductorId[]>()
  for (const id of bare) {
    const seen = new Set([id])
    let root = id
    for (let next = above(root); !seen.has(next); next = above(root)) {
      seen.add(next)
      root = next
    }
    const own = roots.get(root) ?? [root]
    roots.set(root, id === root ? own : [...own, id])
  }
  return roots
}

const isBare = ({ verdict }: Pick<RunAnswer, 'verdict'>): boolean =>
  'value' in verdict && verdict.value === 'unprotected'

const startsAtSource = (end: Answer<EndAnswer>): boolean =>
  'value' in end && end.value.amps === 'unlimited' && end.value.way.length === 0
