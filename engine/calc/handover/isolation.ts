import type { Design, Part } from '../../model/design'
import { type Effects, effectsOf, withOpen } from './effects'
import { type FuseSpot, fuseSpots } from './fuses'
import type { Handle } from './handles'
import { highs, liveParts, sides, touches } from './livenets'
import { runningOn } from './runon'
import { type Standing, standingIn } from './standing'
import { stringsOf } from './strings'
import type { Thing } from './things'
import { linksOf, waysFrom } from './ways'

/** Taking everything off: what to open, and what it does not reach. */
export interface Isolation {
  /** Sources to stop by other means: engines, mains leads. */
  readonly engines: readonly Part[]
  readonly mains: readonly Part[]
  /** Isolators, and breakers where there is none, that part a battery from the rest. */
  readonly batteries: readonly Handle[]
  /** The same for arrays. */
  readonly arrays: readonly Handle[]
  /** Loads and converters that go on working with all of these open. */
  readonly stillOn: readonly Thing[]
  /** Batteries that still feed those. */
  readonly feeding: readonly Part[]
  /** The fuse next to each of those. */
  readonly lastFuses: readonly FuseSpot[]
  /** Batteries that no switch of the list parts from the rest. */
  readonly unswitched: readonly Part[]
  /** Parts that stay joined to a battery, or to the array of a roof by day; nearest the front of the design first. */
  readonly stillLive: readonly Part[]
  /** Chargers that a battery still feeds: some go on charging for a while with the engine stopped. */
  readonly runOn: readonly Part[]
  /** Controllers that stay joined to their array and to loads: some go on feeding them by daylight. */
  readonly sunFed: readonly Part[]
  /** All arrays: they give voltage as long as there is light. */
  readonly lightSources: readonly Part[]
}

/** Which switches take everything off, and what stays live. O(parts + conductors) for each isolator and breaker. */
export function isolationOf(design: Design): Isolation {
  const effects = effectsOf(design)
  const { plan, things } = effects
  const open = opening(effects)
  const now = standingIn(plan, open.reduce(withOpen, effects.usual))
  const touching = (h: Handle, what: 'battery' | 'array') => touches(effects, now, h, what)
  const arrays = open.filter((h) => touching(h, 'array') && !touching(h, 'battery'))
  const parting = open.filter((h) => touching(h, 'battery') && parts(effects, open, h))
  const stillOn = things.filter((t) => t.role !== 'charging' && now.works(t.device))
  const strings = stringsOf(design, plan, now)
  const fed = new Set(stillOn.flatMap(({ device: d }) => highs(effects, now, d)))
  const partedAt = new Set(parting.flatMap((h) => sides(effects, now, h)))
  const feeding = strings.filter((s) => s.highs.some((net) => fed.has(net)))
  return {
    ...suppliesOf(design),
    batteries: parting,
    arrays,
    stillOn,
    feeding: feeding.flatMap((s) => s.parts),
    lastFuses: feeding.flatMap((s) => nearestFuse(design, effects, s.devices)),
    unswitched: strings.flatMap((s) => (s.nets.some((net) => partedAt.has(net)) ? [] : s.parts)),
    stillLive: liveParts(design, effects, now),
    runOn: runningOn(design, effects, now),
    sunFed: sunFed(effects, now),
    lightSources: design.parts.filter((p) => p.kind === 'pv-array'),
  }
}

/** Isolators, and those breakers that part a battery or an array which no isolator parts. */
function opening(effects: Effects): Handle[] {
  const { plan, usual, handles } = effects
  const used = new Set(handles.filter((h) => h.part.kind === 'isolator' && h.is === 'hand'))
  for (const h of handles.filter((x) => x.is === 'breaker')) {
    const now = standingIn(plan, [...used, h].reduce(withOpen, usual))
    const bare = touches(effects, standingIn(plan, [...used].reduce(withOpen, usual)), h, 'battery')
    if (bare || touches(effects, now, h, 'array')) used.add(h)
  }
  return handles.filter((h) => used.has(h))
}

/** Opening it takes something off: alone, or as the last one of several side by side. */
function parts({ plan, usual, things, opened }: Effects, open: readonly Handle[], handle: Handle): boolean {
  if ((opened.get(handle)?.off.size ?? 0) > 0) return true
  const working = (handles: readonly Handle[]): number => {
    const now = standingIn(plan, handles.reduce(withOpen, usual))
    return things.filter((t) => now.works(t.device)).length
  }
  return working(open.filter((h) => h !== handle)) > working(open)
}

/** The first fuse beyond the posts of a string of batteries. */
function nearestFuse(design: Design, { plan }: Effects, devices: readonly number[]): FuseSpot[] {
  const links = linksOf(plan)
  const spots = fuseSpots(design, plan)
  let best: { spot: FuseSpot; far: number } | null = null
  for (const d of devices)
    for (const [id, far] of waysFrom(plan, links, d).far) {
      const spot = spots.get(id)
      if (spot && (!best || far < best.far)) best = { spot, far }
    }
  return best ? [best.spot] : []
}

function sunFed({ plan, things }: Effects, now: Standing): Part[] {
  const high = (d: number): string => now.netOf(plan.border.form.devices[d]!.positive)
  const loads = new Set(things.flatMap((t) => (t.role === 'load' ? [high(t.device)] : [])))
  return things.flatMap((t) =>
    t.role === 'charging' && now.hasArray(t.device) && loads.has(high(t.device)) ? [t.part] : [],
  )
}

function suppliesOf(design: Design): Pick<Isolation, 'engines' | 'mains'> {
  const of = (...kinds: readonly string[]) => design.parts.filter((p) => kinds.includes(p.kind))
  const inlets = of('mains-inlet')
  return {
    engines: of('alternator'),
    mains: inlets.length > 0 ? inlets : of('mains-charger', 'inverter-charger'),
  }
}
