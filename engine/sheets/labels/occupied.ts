import type { Millimetres } from '../../units'
import type { Rect } from './request'

/** Rectangles in square bins, to ask quickly whether a place is free. */
export interface Occupied {
  readonly bins: Map<number, Rect[]>
  /** What was in the way last: neighbouring places are often taken by the same. */
  last: Rect | null
}

const BIN: Millimetres = 10
/** Bins in a row; coordinates up to ±40 m. */
const ROW = 8192

export const emptySheet = (): Occupied => ({ bins: new Map(), last: null })

export function occupy(o: Occupied, rect: Rect): void {
  eachBin(rect, (key) => {
    const bin = o.bins.get(key)
    if (bin) bin.push(rect)
    else o.bins.set(key, [rect])
    return true
  })
}

/** Touching edges are free. */
export function isFree(o: Occupied, rect: Rect): boolean {
  if (o.last && overlaps(rect, o.last)) return false
  return eachBin(rect, (key) => {
    const taken = o.bins.get(key)?.find((other) => overlaps(rect, other))
    if (taken) o.last = taken
    return !taken
  })
}

export const overlaps = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h

/** False as soon as the visitor is. */
function eachBin(r: Rect, visit: (key: number) => boolean): boolean {
  const c2 = Math.floor((r.x + r.w) / BIN)
  const r2 = Math.floor((r.y + r.h) / BIN)
  for (let row = Math.floor(r.y / BIN); row <= r2; row++)
    for (let c = Math.floor(r.x / BIN); c <= c2; c++) if (!visit(row * ROW + c)) return false
  return true
}
