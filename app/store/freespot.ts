import { boxOf, type Design, type XY } from '../../engine'

const STEP = 10
const CLEAR = 10

/** The free place nearest to a wished one for a box of w × h mm, clear of all parts; found in growing squares. */
export function freeSpot(design: Design, [wx, wy]: XY, w: number, h: number): XY {
  const boxes = design.parts.map((part) => boxOf(part))
  const free = (x: number, y: number) =>
    boxes.every(
      (b) => x + w + CLEAR <= b.x || b.x + b.w + CLEAR <= x || y + h + CLEAR <= b.y || b.y + b.h + CLEAR <= y,
    )
  const x0 = onGrid(wx - w / 2)
  const y0 = onGrid(wy - h / 2)
  for (let ring = 0; ring < 200; ring++)
    for (const [i, j] of square(ring)) {
      const x = x0 + i * STEP
      const y = y0 + j * STEP
      if (free(x, y)) return [x, y]
    }
  return [x0, y0]
}

/** Cells of a square ring around the middle, the nearest sides first. */
function square(ring: number): readonly XY[] {
  if (ring === 0) return [[0, 0]]
  const cells: XY[] = []
  for (let k = -ring; k <= ring; k++) cells.push([k, ring], [k, -ring], [ring, k], [-ring, k])
  return cells.sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
}

const onGrid = (mm: number) => Math.round(mm / 2.5) * 2.5
