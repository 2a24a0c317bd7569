import { boxOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import type { Millimetres } from '../units'

/** Room left between parts that stood farther apart, mm: words and a few conductors. */
const KEEP: Millimetres = 45
const GRID = 2.5

/**
 * The design with these parts moved together where a strip across the drawing is empty of them, their order kept:
 * for a sheet that shows few of the parts. Ways dragged by hand are let go. O(parts · log parts).
 */
export function closedUp(design: Design, parts: readonly Part[]): Design {
  const boxes = parts.map((p) => ({ id: p.id, ...boxOf(p, design.conductors) }))
  const left = shiftsOf(boxes.map(({ id, x, w }) => ({ id, start: x, end: x + w })))
  const up = shiftsOf(boxes.map(({ id, y, h }) => ({ id, start: y, end: y + h })))
  return {
    ...design,
    parts: design.parts.map((p) => {
      const [dx, dy] = [left.get(p.id) ?? 0, up.get(p.id) ?? 0]
      return dx === 0 && dy === 0 ? p : { ...p, x: p.x - dx, y: p.y - dy }
    }),
    conductors: design.conductors.map((c) => (c.path.length === 0 ? c : { ...c, path: [] })),
  }
}

interface Span {
  readonly id: string
  readonly start: Millimetres
  readonly end: Millimetres
}

/** How far each span moves back when every gap over `KEEP` is closed to it. */
function shiftsOf(spans: readonly Span[]): Map<string, Millimetres> {
  const shifts = new Map<string, Millimetres>()
  let [reached, shift] = [Infinity, 0]
  for (const { id, start, end } of [...spans].sort((a, b) => a.start - b.start)) {
    if (start - reached > KEEP) shift += Math.floor((start - reached - KEEP) / GRID) * GRID
    shifts.set(id, shift)
    reached = reached === Infinity ? end : Math.max(reached, end)
  }
  return shifts
}
