import type { Millimetres } from '../units'

/** Symbols, terminals and corners stand on this grid. */
export const GRID: Millimetres = 2.5

/** Furthest coordinate either way: a drawing of 40 m is beyond any sheet, and keeps every sum exact. */
export const FURTHEST: Millimetres = 20000

/** Nearest grid line within bounds. */
export function snap(at: Millimetres): Millimetres {
  const bounded = Math.min(FURTHEST, Math.max(-FURTHEST, at))
  return Math.round(bounded / GRID) * GRID + 0
}
