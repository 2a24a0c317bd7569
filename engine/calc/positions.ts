import { blocksOf } from '../math/blocks'
import type { Border, OpenContacts } from './network'
import { prepare } from './prepare'

/** Beyond this many combinations, contacts are moved one at a time from the drawn state. */
const MOST = 32

/**
 * The positions of contacts that can make a difference: each throw of a changeover, and make contacts that lie in
 * a meshed part, where opening one moves current to the others. In a tree every contact closed is the worst case.
 * `all` is the border with every contact closed. Each answer is the set of open contacts.
 */
export function positionsOf(all: Border): { open: readonly OpenContacts[]; complete: boolean } {
  const axes = [...throwsOf(all), ...meshedContacts(all).map((id) => [[], [id]])]
  const total = axes.reduce((n, axis) => n * axis.length, 1)
  if (total <= MOST) {
    const sets = axes.reduce<string[][]>(
      (found, axis) => found.flatMap((open) => axis.map((more) => [...open, ...more])),
      [[]],
    )
    return { open: sets.map((ids) => new Set(ids)), complete: true }
  }
  const first = axes.map((axis) => axis[0]!)
  const sets = [first.flat()]
  axes.forEach((axis, i) => {
    for (const other of axis.slice(1)) sets.push(first.flatMap((ids, j) => (i === j ? other : ids)))
  })
  return { open: sets.map((ids) => new Set(ids)), complete: false }
}

/** For each changeover, the contacts to open for each of its positions. */
function throwsOf(all: Border): string[][][] {
  const throws = new Map<string, Map<string, string[]>>()
  for (const [id, { part, branch }] of all.branches) {
    if (!branch.changeover) continue
    const key = `${part}/${branch.changeover.name}`
    const positions = throws.get(key) ?? new Map<string, string[]>()
    throws.set(key, positions)
    positions.set(branch.changeover.position, [...(positions.get(branch.changeover.position) ?? []), id])
  }
  return [...throws.values()].map((positions) =>
    [...positions.keys()].map((closed) =>
      [...positions].flatMap(([position, ids]) => (position === closed ? [] : ids)),
    ),
  )
}

function meshedContacts(all: Border): string[] {
  const p = prepare(all.form)
  const { of } = blocksOf(p.graph)
  return all.form.branches.flatMap((b, e) => {
    const ref = all.branches.get(b.id)
    return of[e]! >= 0 && ref?.branch.kind === 'contact' && !ref.branch.changeover ? [b.id] : []
  })
}
