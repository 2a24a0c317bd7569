import type { Conductor, Design, PartId } from '../model/design'
import { partById } from '../model/lookup'
import { done, set, withConductors, withParts } from './change'
import type { EditOf, EditResult } from './edit'
import { snap } from './grid'
import { refuse } from './refuse'

interface Shift {
  readonly dx: number
  readonly dy: number
}

/** Moves parts to grid positions. Corners dragged by hand go along where both ends of the conductor move alike. */
export function applyMove(design: Design, edit: EditOf<'move'>): EditResult {
  const shifts = new Map<PartId, Shift>()
  for (const { part: id, x, y } of edit.to) {
    const part = partById(design, id)
    if (!part) return refuse('no-part', `There is no part ${id} to move.`)
    if (!Number.isFinite(x) || !Number.isFinite(y))
      return refuse('not-a-place', `${part.designation} cannot be moved to a place that is not a number.`)
    shifts.set(id, { dx: snap(x) - part.x, dy: snap(y) - part.y })
  }
  const moved = withParts(design, (p) => {
    const by = shifts.get(p.id)
    return by ? set(p, { x: p.x + by.dx, y: p.y + by.dy }) : p
  })
  return done(withConductors(moved, (c) => carried(c, shifts.get(c.from.part), shifts.get(c.to.part))))
}

function carried(c: Conductor, a: Shift | undefined, b: Shift | undefined): Conductor {
  if (c.path.length === 0 || !a || !b || a.dx !== b.dx || a.dy !== b.dy || (a.dx === 0 && a.dy === 0))
    return c
  return { ...c, path: c.path.map(({ x, y }) => ({ x: x + a.dx, y: y + a.dy })) }
}
