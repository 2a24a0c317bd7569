import type { Plan } from '../operating/plan'

/** How far everything lies from a thing, going up to the batteries through conductors, contacts, fuses and converters. */
export interface Ways {
  /** Joints between the thing and a branch, by branch; what cannot be reached has none. */
  readonly far: ReadonlyMap<string, number>
  /** Branches of a shortest way to each battery, nearest first. */
  readonly toBatteries: readonly (readonly string[])[]
}

interface Step {
  readonly node: string
  readonly from: Step | null
  readonly branch: string | null
  readonly far: number
}

/** Joints are walked whichever way contacts stand, but through none of `without`. O(parts + conductors). */
export function waysFrom(
  plan: Plan,
  links: Links,
  device: number,
  without: ReadonlySet<string> = new Set(),
): Ways {
  const start = plan.border.form.devices[device]!
  const far = new Map<string, number>()
  const seen = new Map<string, Step>()
  const open: Step[] = []
  const reach = (node: string, from: Step | null, branch: string | null): void => {
    if (branch !== null && !far.has(branch)) far.set(branch, from?.far ?? 0)
    if (seen.has(node)) return
    const step: Step = { node, from, branch, far: from ? from.far + 1 : 0 }
    seen.set(node, step)
    open.push(step)
  }
  reach(start.positive, null, null)
  reach(start.negative, null, null)
  const { input } = plan.devices[device]!
  if (input !== -1) {
    reach(plan.border.form.devices[input]!.positive, null, null)
    reach(plan.border.form.devices[input]!.negative, null, null)
  }
  for (const step of open)
    for (const { to, branch } of links.get(step.node) ?? [])
      if (branch === null || !without.has(branch)) reach(to, step, branch)
  const ends = plan.devices.flatMap(({ is }, d) =>
    is === 'battery' ? [plan.border.form.devices[d]!.positive] : [],
  )
  return { far, toBatteries: ends.map((node) => trail(seen.get(node))) }
}

function trail(end: Step | undefined): string[] {
  const branches: string[] = []
  for (let at = end ?? null; at; at = at.from) if (at.branch !== null) branches.push(at.branch)
  return branches.reverse()
}

/** What each node is joined to; the output of a converter leads on to its input. */
export type Links = ReadonlyMap<string, readonly { readonly to: string; readonly branch: string | null }[]>

export function linksOf({ border, devices }: Plan): Links {
  const links = new Map<string, { to: string; branch: string | null }[]>()
  const link = (from: string, to: string, branch: string | null) => {
    const list = links.get(from)
    if (list) list.push({ to, branch })
    else links.set(from, [{ to, branch }])
  }
  for (const { id, from, to } of border.form.branches) {
    link(from, to, id)
    link(to, from, id)
  }
  devices.forEach(({ is, input }, d) => {
    if (is !== 'held' || input === -1) return
    const output = border.form.devices[d]!
    const fed = border.form.devices[input]!
    link(output.positive, fed.positive, null)
    link(output.negative, fed.negative, null)
  })
  return links
}
