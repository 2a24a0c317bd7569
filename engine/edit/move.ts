import type { Conductor, Design, Part, PartId, Place, ViewKey } from '../model/design'
import { partById } from '../model/lookup'
import { done, set, withConductors, withParts } from './change'
import { designIn } from './designin'
import type { EditOf, EditResult } from './edit'
import { snap } from './grid'
import { refuse } from './refuse'

interface Shift {
  readonly dx: number
  readonly dy: number
}

/**
 * Moves parts to grid positions, in one view: the single-line one moves what follows it too, another one gives the
 * parts a place of their own there. Corners dragged by hand go along where both ends of the conductor move alike.
 */
export function applyMove(design: Design, { to, view = 'single-line' }: EditOf<'move'>): EditResult {
  const there = designIn(design, view)
  const shifts = new Map<PartId, Shift>()
  for (const { part: id, x, y } of to) {
    const part = partById(there, id)
    if (!part) return refuse('no-part', `There is no part ${id} to move.`)
    if (!Number.isFinite(x) || !Number.isFinite(y))
      return refuse('not-a-place', `${part.designation} cannot be moved to a place that is not a number.`)
    shifts.set(id, { dx: snap(x) - part.x, dy: snap(y) - part.y })
  }
  const moved = withParts(design, (p) => {
    const by = shifts.get(p.id)
    return by ? movedIn(p, by, view) : p
  })
  return done(withConductors(moved, (c) => carried(c, shifts.get(c.from.part), shifts.get(c.to.part), view)))
}

function movedIn(part: Part, { dx, dy }: Shift, view: ViewKey): Part {
  if (view === 'single-line') return set(part, { x: part.x + dx, y: part.y + dy })
  if (dx === 0 && dy === 0) return part
  const { x, y } = part.at?.[view] ?? part
  return { ...part, at: { ...part.at, [view]: { x: x + dx, y: y + dy } } }
}

function carried(c: Conductor, a: Shift | undefined, b: Shift | undefined, view: ViewKey): Conductor {
  if (!a || !b || a.dx !== b.dx || a.dy !== b.dy || (a.dx === 0 && a.dy === 0)) return c
  const along = ({ x, y }: Place): Place => ({ x: x + a.dx, y: y + a.dy })
  if (view === 'single-line') return c.path.length === 0 ? c : { ...c, path: c.path.map(along) }
  const own = c.pathIn?.[view]
  return own ? { ...c, pathIn: { ...c.pathIn, [view]: own.map(along) } } : c
}
