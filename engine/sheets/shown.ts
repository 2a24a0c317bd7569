import type { Conductor, ConductorId, Design, Part } from '../model/design'
import type { Nature } from './nature'
import type { SceneView } from './scene'

/** A conductor that a view draws, and in the single-line view the return that its line also stands for. */
export interface Shown {
  readonly conductor: Conductor
  readonly withReturn: Conductor | null
}

/**
 * The conductors that a view draws. Single-line: one return of each feed is left out, as the line of the feed stands
 * for both. Data: links alone. O(conductors).
 */
export function shownIn(design: Design, view: SceneView, natureOf: (c: Conductor) => Nature): Shown[] {
  const { conductors } = design
  if (view === 'data') return conductors.filter((c) => natureOf(c) === 'data').map(alone)
  if (view === 'both-poles') return conductors.map(alone)
  const returns = firstReturns(conductors)
  const hidden = new Set([...returns.values()].map((c) => c.id))
  return conductors
    .filter((c) => !hidden.has(c.id))
    .map((conductor) => ({ conductor, withReturn: returns.get(conductor.id) ?? null }))
}

/** Parts that a view draws: the data view leaves out what no link reaches. */
export function partsIn(design: Design, view: SceneView, shown: readonly Shown[]): readonly Part[] {
  if (view !== 'data') return design.parts
  const linked = new Set(shown.flatMap(({ conductor: { from, to } }) => [from.part, to.part]))
  return design.parts.filter((p) => linked.has(p.id))
}

const alone = (conductor: Conductor): Shown => ({ conductor, withReturn: null })

/** The first return of each feed, where the feed itself is no return. */
function firstReturns(conductors: readonly Conductor[]): Map<ConductorId, Conductor> {
  const feeds = new Set(conductors.filter((c) => c.returnOf === null).map((c) => c.id))
  const returns = new Map<ConductorId, Conductor>()
  for (const c of conductors)
    if (c.returnOf !== null && feeds.has(c.returnOf) && !returns.has(c.returnOf)) returns.set(c.returnOf, c)
  return returns
}
