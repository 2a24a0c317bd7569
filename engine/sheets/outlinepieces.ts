import { GRID } from '../edit/grid'
import type { Millimetres } from '../units'
import { around } from './extent'
import type { Area } from './paper'

/** Conductors run on this grid; outlines are drawn halfway between its lines, so that none lies on another. */
const HALF: Millimetres = GRID / 2

/**
 * Rectangles that hold all members and nothing of the others: one where the members stand together, several where
 * others stand between them. The nearest are taken together first; a member that others crowd stands alone. O(members³).
 */
export function piecesRound(members: readonly Area[], others: readonly Area[]): Area[] {
  const pieces = [...members]
  // Whatever stands between two pieces stands between them for good: they are not tried again.
  const parted = new Map(members.map((m) => [m, new Set<Area>()]))
  for (;;) {
    let best: { a: number; b: number; joined: Area; gap: number } | null = null
    for (let a = 0; a < pieces.length; a++)
      for (let b = a + 1; b < pieces.length; b++) {
        const gap = gapOf(pieces[a]!, pieces[b]!)
        if ((best && gap >= best.gap) || parted.get(pieces[a]!)!.has(pieces[b]!)) continue
        const joined = around([pieces[a]!, pieces[b]!])
        if (others.some((o) => meets(grown(joined), o))) {
          parted.get(pieces[a]!)!.add(pieces[b]!)
          continue
        }
        best = { a, b, joined, gap }
      }
    if (!best) break
    pieces.splice(best.b, 1)
    pieces[best.a] = best.joined
    parted.set(best.joined, new Set())
  }
  return pieces.map(grown)
}

export const meets = (a: Area, b: Area): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h

export const holds = (a: Area, b: Area): boolean =>
  b.x >= a.x && b.y >= a.y && b.x + b.w <= a.x + a.w && b.y + b.h <= a.y + a.h

/** The smallest rectangle on the grid round an area with the words at its edge. */
export function outwards({ x, y, w, h }: Area): Area {
  const [left, top] = [down(x - HALF), down(y - HALF)]
  return { x: left, y: top, w: -down(-(x + w + HALF)) - left, h: -down(-(y + h + HALF)) - top }
}

const down = (mm: Millimetres): Millimetres => Math.floor(mm / GRID) * GRID

/** Where a rectangle on the grid is drawn: half a step outside. */
export const drawnAt = ({ x, y, w, h }: Area): Area => ({
  x: x - HALF,
  y: y - HALF,
  w: w + GRID,
  h: h + GRID,
})

const grown = (area: Area): Area => drawnAt(outwards(area))

function gapOf(a: Area, b: Area): number {
  const dx = Math.max(0, a.x - b.x - b.w, b.x - a.x - a.w)
  const dy = Math.max(0, a.y - b.y - b.h, b.y - a.y - a.h)
  return dx + dy
}
