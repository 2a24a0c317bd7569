import type { Conductor, Design, Part, PartId, Place, ViewKey } from '../model/design'
import type { Millimetres } from '../units'
import { withZonesFollowing } from './zonesfollow'

/**
 * A design as one view shows it: parts that were moved by hand in that view stand at their place of their own there,
 * all others where the single-line view has them. Zones keep round their parts, ways laid by hand go along. The same
 * design where nothing has a place of its own; otherwise the same object for the same design. O(design) the first time.
 */
export function designIn(design: Design, view: ViewKey): Design {
  if (view === 'single-line') return design
  const known = seen[view].get(design)
  if (known) return known
  const there = worked(design, view)
  seen[view].set(design, there)
  return there
}

type OwnView = Exclude<ViewKey, 'single-line'>

const seen: Readonly<Record<OwnView, WeakMap<Design, Design>>> = {
  'both-poles': new WeakMap(),
  data: new WeakMap(),
}
/** A part keeps its identity from one design to the next, in each view. */
const seenParts: Readonly<Record<OwnView, WeakMap<Part, Part>>> = {
  'both-poles': new WeakMap(),
  data: new WeakMap(),
}

function worked(design: Design, view: OwnView): Design {
  const by = new Map<PartId, Place>()
  const parts = design.parts.map((part) => {
    const own = part.at?.[view]
    if (!own) return part
    by.set(part.id, { x: own.x - part.x, y: own.y - part.y })
    return partIn(part, own, view)
  })
  const isOwn = by.size > 0 || design.conductors.some((c) => c.pathIn?.[view])
  if (!isOwn) return design
  const conductors = design.conductors.map((c) => pathSeen(c, view, by.get(c.from.part), by.get(c.to.part)))
  return withZonesFollowing(design, { ...design, parts, conductors })
}

function partIn(part: Part, { x, y }: Place, view: OwnView): Part {
  const known = seenParts[view].get(part)
  if (known) return known
  const { at: _at, ...rest } = part
  const there = { ...rest, x, y }
  seenParts[view].set(part, there)
  return there
}

/** A way laid by hand in this view; else that of the single-line view, where both its ends stand alike. */
function pathSeen(c: Conductor, view: OwnView, from?: Place, to?: Place): Conductor {
  const own = c.pathIn?.[view]
  if (own) return { ...c, path: own }
  if (c.path.length === 0 || (!from && !to)) return c
  const alike = from && to && from.x === to.x && from.y === to.y
  return { ...c, path: alike ? c.path.map((p) => shifted(p, from.x, from.y)) : [] }
}

const shifted = ({ x, y }: Place, dx: Millimetres, dy: Millimetres): Place => ({ x: x + dx, y: y + dy })
