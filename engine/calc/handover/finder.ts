import type { Design } from '../../model/design'
import { type Effects, effectsOf } from './effects'
import { type FuseSpot, fuseSpots } from './fuses'
import type { Handle } from './handles'
import { fusesOn, oneOfSeveral } from './several'
import type { Thing } from './things'
import { type Links, linksOf, waysFrom } from './ways'

/** Why a fuse is to be looked at. */
export type FuseReason =
  /** It stands in the way of the current: if it has blown, the thing is dead. */
  | 'in the way'
  /** It feeds the coil that switches the thing: if it has blown, the thing is dead too. */
  | 'feeds the switching'
  /** One of several side by side: the thing is dead when all of them have blown. */
  | 'one of several'

export interface FuseStep {
  readonly fuse: FuseSpot
  readonly why: FuseReason
}

/** What can have made a thing dead, in the order to look. */
export interface FuseFind {
  readonly thing: Thing
  /** Switches, breakers and plugs that must be on, nearest first; breakers stand here and among the fuses. */
  readonly switches: readonly Handle[]
  /** From the thing up to the battery; what feeds the switching comes after what is in the way. */
  readonly fuses: readonly FuseStep[]
  /** False: it is dead as the switches usually stand, so that its way was found by the wiring alone. */
  readonly works: boolean
}

const UNREACHED = Number.MAX_SAFE_INTEGER

/** The way of every thing to its batteries. O(things · (parts + conductors)) beside the effects. */
export function fuseFinds(design: Design): FuseFind[] {
  const effects = effectsOf(design)
  const { plan, things } = effects
  const links = linksOf(plan)
  const spots = fuseSpots(design, plan)
  const fromCoils = plan.devices.flatMap(({ is }, d) => (is === 'coil' ? [waysFrom(plan, links, d).far] : []))
  const farFromCoil = (id: string): number => Math.min(...fromCoils.map((far) => far.get(id) ?? UNREACHED))
  return things.map((thing) => {
    const { far } = waysFrom(plan, links, thing.device)
    const nearest = (ids: readonly string[]): number => Math.min(...ids.map((id) => far.get(id) ?? UNREACHED))
    return {
      thing,
      works: effects.working.has(thing.part.id),
      switches: switchesOf(effects, thing).sort((a, b) => nearest(a.branches) - nearest(b.branches)),
      fuses: stepsOf(effects, thing, links, spots, (id, why) =>
        why === 'feeds the switching' ? farFromCoil(id) : nearest([id]),
      ),
    }
  })
}

const switchesOf = ({ opened }: Effects, { part }: Thing): Handle[] =>
  [...opened].flatMap(([handle, { off }]) => (off.has(part.id) ? [handle] : []))

function stepsOf(
  effects: Effects,
  { part, device }: Thing,
  links: Links,
  spots: ReadonlyMap<string, FuseSpot>,
  far: (id: string, why: FuseReason) => number,
): FuseStep[] {
  const reasons = new Map<string, FuseReason>()
  for (const [id, { off, held }] of effects.fuses) {
    if (held.has(part.id)) reasons.set(id, 'in the way')
    else if (off.has(part.id)) reasons.set(id, 'feeds the switching')
  }
  if (effects.working.has(part.id)) {
    for (const id of oneOfSeveral(effects, links, device, new Set(reasons.keys())))
      reasons.set(id, 'one of several')
  } else for (const id of fusesOn(effects, links, device)) reasons.set(id, 'in the way')
  const late = (why: FuseReason): number => (why === 'feeds the switching' ? 1 : 0)
  return [...reasons]
    .sort(([a, why], [b, other]) => late(why) - late(other) || far(a, why) - far(b, other))
    .flatMap(([id, why]) => {
      const fuse = spots.get(id)
      return fuse ? [{ fuse, why }] : []
    })
}
