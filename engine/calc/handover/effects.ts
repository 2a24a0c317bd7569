import type { Design, PartId } from '../../model/design'
import { changed } from '../operating/change'
import { type Plan, planOf } from '../operating/plan'
import type { OperatingState } from '../operating/state'
import { usualState } from '../operating/usual'
import { type Handle, handlesOf } from './handles'
import { type Standing, standingIn } from './standing'
import { type Thing, thingsOf } from './things'

/** What opening each switch or drawing each fuse alone takes off, everything else standing as usual. */
export interface Effects {
  readonly plan: Plan
  readonly usual: OperatingState
  readonly standing: Standing
  readonly things: readonly Thing[]
  readonly handles: readonly Handle[]
  /** Things that work as usual. */
  readonly working: ReadonlySet<PartId>
  /** By branch of the fuse. `held`: with every relay held where it stands, so that what is in the way itself shows. */
  readonly fuses: ReadonlyMap<
    string,
    { readonly off: ReadonlySet<PartId>; readonly held: ReadonlySet<PartId> }
  >
  /** By handle that opens; `on`: what works only then, behind a contact that closes at rest. */
  readonly opened: ReadonlyMap<
    Handle,
    { readonly off: ReadonlySet<PartId>; readonly on: ReadonlySet<PartId> }
  >
}

const remembered = new WeakMap<Design, Effects>()

/** Worked out once for each design. O((fuses + switches) · (parts + conductors)). */
export function effectsOf(design: Design): Effects {
  const known = remembered.get(design)
  if (known) return known
  const plan = planOf(design)
  const usual = usualState(design)
  const standing = standingIn(plan, usual)
  const things = thingsOf(design, plan)
  const handles = handlesOf(design, plan)
  const worksIn = (state: OperatingState, follow = true): Set<PartId> => {
    const now = standingIn(plan, state, follow)
    return new Set(things.flatMap((t) => (now.works(t.device) ? [t.part.id] : [])))
  }
  const working = new Set(things.flatMap((t) => (standing.works(t.device) ? [t.part.id] : [])))
  const lost = (now: ReadonlySet<PartId>): Set<PartId> => new Set([...working].filter((id) => !now.has(id)))

  const fuses = new Map(
    [...plan.border.branches].flatMap(([id, { branch }]) => {
      if (branch.kind !== 'fuse') return []
      const out = changed(usual, { set: 'fuse', id, out: true })
      return [[id, { off: lost(worksIn(out)), held: lost(worksIn(out, false)) }] as const]
    }),
  )
  const opened = new Map(
    handles.map((h) => {
      const now = worksIn(withOpen(usual, h))
      return [h, { off: lost(now), on: new Set([...now].filter((id) => !working.has(id))) }] as const
    }),
  )
  const effects = { plan, usual, standing, things, handles, working, fuses, opened }
  remembered.set(design, effects)
  return effects
}

/** The state with a handle opened. */
export function withOpen(state: OperatingState, { branches, is }: Handle): OperatingState {
  return branches.reduce(
    (now, id) =>
      changed(now, is === 'breaker' ? { set: 'fuse', id, out: true } : { set: 'contact', id, open: true }),
    state,
  )
}
