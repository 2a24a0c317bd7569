import type { ConductorId } from '../model/design'
import type { RunAnswer } from './answers'
import { bareRoots } from './bareroots'
import { freeWays } from './freeways'
import type { Prepared } from './prepare'
import { bearsOn, type Solved, type State } from './solved'

/** Returns × roots × size of the network looked through at most: some tenths of a second. */
const MOST_STEPS = 2e7

/**
 * For each return that has no limit, the bare feeds that are the cause: with a device fitted at every other one, it still has
 * none. Where no single one is enough, all of them together. Empty: it has none either with a device fitted at each of
 * them, and the cause is another. O(returns × roots × network), and beyond a bound all roots are named.
 */
export function bareCauses(
  runs: ReadonlyMap<ConductorId, RunAnswer>,
  states: readonly State[],
): Map<ConductorId, readonly ConductorId[]> {
  const roots = [...bareRoots(runs).keys()]
  const endless = [...runs].flatMap(([id, { sustained }]) =>
    sustained && 'value' in sustained && sustained.value.amps === 'unlimited' ? [id] : [],
  )
  const causes = new Map<ConductorId, readonly ConductorId[]>()
  if (roots.length === 0 || endless.length === 0) return causes
  const size = states[0]!.any.p.graph.edgeCount * states.length
  if (endless.length * (roots.length + 1) * size > MOST_STEPS)
    return new Map(endless.map((id) => [id, roots]))

  const ways = states.map((state) => ({ state, way: freeWays(state.any) }))
  const hasWay = (id: ConductorId, mended: readonly ConductorId[]): boolean =>
    ways.some(({ state, way }) => bearsOn(state, id) && endlessWith(state.any, way, id, mended))
  for (const id of endless) {
    if (hasWay(id, roots)) continue
    const alone = roots.filter((root) =>
      hasWay(
        id,
        roots.filter((other) => other !== root),
      ),
    )
    causes.set(id, alone.length > 0 ? alone : roots)
  }
  return causes
}

function endlessWith(
  { p }: Solved,
  way: ReturnType<typeof freeWays>,
  id: ConductorId,
  mended: readonly ConductorId[],
): boolean {
  const e = p.branchIndex.get(id)
  return e !== undefined && way(e, branchesOf(p, mended))
}

const branchesOf = (p: Prepared, ids: readonly ConductorId[]): Set<number> =>
  new Set(ids.flatMap((id) => p.branchIndex.get(id) ?? []))
