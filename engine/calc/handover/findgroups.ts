import type { Part } from '../../model/design'
import type { FuseFind, FuseStep } from './finder'
import type { Handle } from './handles'

/** Things that go dead together: those of one block with the same fuses ahead of it. */
export interface FindGroup {
  readonly block: Part
  readonly finds: readonly FuseFind[]
  /** Ahead of each of them, but for what everything hangs on. */
  readonly fuses: readonly FuseStep[]
  readonly switches: readonly Handle[]
}

/** What everything that works hangs on. */
export interface Common {
  readonly fuses: readonly FuseStep[]
  readonly switches: readonly Handle[]
}

const keyOf = ({ fuse, why }: FuseStep): string => `${why} ${fuse.id}`

const inAll = (step: FuseStep, finds: readonly FuseFind[]): boolean =>
  finds.every((f) => f.fuses.some((s) => keyOf(s) === keyOf(step)))

/** Empty where fewer than two loads work. O(things · fuses on the way of one). */
export function commonOf(finds: readonly FuseFind[]): Common {
  const [first, ...others] = finds.filter((f) => f.works && f.thing.role === 'load')
  if (!first || others.length === 0) return { fuses: [], switches: [] }
  return {
    fuses: first.fuses.filter((step) => inAll(step, others)),
    switches: first.switches.filter((h) => others.every((f) => f.switches.includes(h))),
  }
}

/** Ahead of its own fuse, but for what everything hangs on. */
export function aheadOf({ fuses }: FuseFind, common: Common): FuseStep[] {
  const shared = new Set(common.fuses.map(keyOf))
  return fuses.slice(1).filter((step) => !shared.has(keyOf(step)))
}

/** For each block at most one group, the largest, of two things or more. O(things · fuses on the way of one). */
export function groupsOf(finds: readonly FuseFind[], common: Common): FindGroup[] {
  const byBlock = new Map<Part, Map<string, FuseFind[]>>()
  for (const find of finds) {
    const own = find.fuses[0]?.fuse
    const ahead = aheadOf(find, common)
    if (!own || own.way === null || ahead.length === 0 || find.thing.role === 'charging') continue
    const groups = byBlock.get(own.part) ?? new Map<string, FuseFind[]>()
    const key = ahead.map(keyOf).join('\n')
    byBlock.set(own.part, groups.set(key, [...(groups.get(key) ?? []), find]))
  }
  return [...byBlock].flatMap(([block, groups]): FindGroup[] => {
    const of = [...groups.values()].reduce((most, g) => (g.length > most.length ? g : most))
    const [first, ...others] = of
    if (!first || others.length === 0) return []
    const switches = first.switches.filter(
      (h) => !common.switches.includes(h) && others.every((f) => f.switches.includes(h)),
    )
    return [{ block, finds: of, fuses: aheadOf(first, common), switches }]
  })
}
