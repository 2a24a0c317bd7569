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
  const right = Math.floor((rect.x + rect.w) / BIN)
  const bottom = Math.floor((rect.y + rect.h) / BIN)
  for (let row = Math.floor(rect.y / BIN); row <= bottom; row++)
    for (let column = Math.floor(rect.x / BIN); column <= right; column++) {
      const key = row * ROW + column
      const bin = o.bins.get(key)
      if (bin) bin.push(rect)
      else o.bins.set(key, [rect])
    }
}

/** Touching edges are free. Asked hundreds of thousands of times a sheet: plain loops, nothing is made. */
export function isFree(o: Occupied, rect: Rect): boolean {
  if (o.last && overlaps(rect, o.last)) return false
  const left = Math.floor(rect.x / BIN)
  const right = Math.floor((rect.x + rect.w) / BIN)
  const bottom = Math.floor((rect.y + rect.h) / BIN)
  for (let row = Math.floor(rect.y / BIN); row <= bottom; row++)
    for (let column = left; column <= right; column++) {
      const bin = o.bins.get(row * ROW + column)
      if (!bin) continue
      for (let i = 0; i < bin.length; i++)
        if (overlaps(rect, bin[i]!)) {
          o.last = bin[i]!
          return false
        }
    }
  return true
}

export const overlaps = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h
