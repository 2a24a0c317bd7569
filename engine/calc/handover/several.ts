import { changed } from '../operating/change'
import type { Effects } from './effects'
import { standingIn } from './standing'
import { type Links, waysFrom } from './ways'

/**
 * Fuses side by side on the ways of a thing to its batteries: with all of them out it is dead, with any one of them in
 * it works. Empty where there are none, or where a way without a fuse stays. `known`: fuses that make it dead alone.
 */
export function oneOfSeveral(
  effects: Effects,
  links: Links,
  device: number,
  known: ReadonlySet<string>,
): string[] {
  const { plan, usual } = effects
  const works = (out: readonly string[]): boolean => {
    const state = out.reduce((now, id) => changed(now, { set: 'fuse', id, out: true }), usual)
    return standingIn(plan, state).works(device)
  }
  const open = plan.contacts.flatMap(({ id }) => (effects.standing.closed.has(id) ? [] : [id]))
  let out: string[] = []
  while (works(out)) {
    const more = fusesOn(effects, links, device, new Set([...out, ...open])).filter((id) => !known.has(id))
    if (more.length === 0) return []
    out = [...out, ...more]
  }
  for (const id of [...out]) {
    const without = out.filter((x) => x !== id)
    if (!works(without)) out = without
  }
  return out.length > 1 ? out : []
}

/** Fuses on the shortest ways of a thing to each battery that pass none of `out`, whichever way switches stand. */
export function fusesOn(
  { plan }: Effects,
  links: Links,
  device: number,
  out: ReadonlySet<string> = new Set(),
): string[] {
  const ways = waysFrom(plan, links, device, out).toBatteries
  return [...new Set(ways.flat())].filter((id) => plan.border.branches.get(id)?.branch.kind === 'fuse')
}
