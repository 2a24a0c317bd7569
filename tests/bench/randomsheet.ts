import type { RouteBox, RoutePort, RouteRequest } from '../../engine/sheets/route/request'
import { Random } from '../reference/random'

export interface RandomSheet {
  readonly boxes: readonly RouteBox[]
  readonly requests: readonly RouteRequest[]
}

const GRID = 2.5
const SIDES = ['left', 'right', 'up', 'down'] as const

/**
 * Boxes strewn over a sheet without touching, and conductors between random terminals on their edges. `near`: the
 * share of conductors that join parts which stand near each other, as in a drawing made on purpose.
 */
export function randomSheet(seed: number, parts: number, conductors: number, near: number): RandomSheet {
  const random = new Random(seed)
  const side = Math.ceil(Math.sqrt(parts))
  const cellW = 45
  const cellH = 37.5
  const boxes = Array.from({ length: parts }, (_, i) => {
    const w = GRID * random.whole(4, 10)
    const h = GRID * random.whole(4, 8)
    const x = (i % side) * cellW + GRID * random.whole(0, Math.floor((cellW - w - 7.5) / GRID))
    const y = Math.floor(i / side) * cellH + GRID * random.whole(0, Math.floor((cellH - h - 7.5) / GRID))
    return { id: `p${i}`, x, y, w, h }
  })
  const used = new Map<string, number>()
  const port = (b: RouteBox): RoutePort => {
    for (;;) {
      const at = random.pick(SIDES)
      const isUpright = at === 'left' || at === 'right'
      const along = GRID * random.whole(1, (isUpright ? b.h : b.w) / GRID - 1)
      const x = at === 'left' ? b.x : at === 'right' ? b.x + b.w : b.x + along
      const y = at === 'up' ? b.y : at === 'down' ? b.y + b.h : b.y + along
      const key = `${x} ${y} ${at}`
      const n = used.get(key) ?? 0
      if (n > 0 && !random.chance(0.3)) continue
      used.set(key, n + 1)
      return { x, y, side: at }
    }
  }
  const requests = Array.from({ length: conductors }, (_, i) => {
    const a = random.whole(0, parts - 1)
    let b = a
    while (b === a) {
      const step = () => random.whole(-2, 2)
      const c = (a % side) + step()
      const r = Math.floor(a / side) + step()
      const isThere = c >= 0 && c < side && r >= 0 && r * side + c < parts
      b = random.chance(near) ? (isThere ? r * side + c : a) : random.whole(0, parts - 1)
    }
    return { id: `w${i}`, from: port(boxes[a]!), to: port(boxes[b]!) }
  })
  return { boxes, requests }
}
