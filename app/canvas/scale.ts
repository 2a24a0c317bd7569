import type { XY } from '../../engine'

/** CSS px per millimetre at zoom 1. */
export const PX = 4
/** Everything stands on this grid, mm. */
export const GRID = 2.5

export const snap = (mm: number): number => Math.round(mm / GRID) * GRID
export const snapXY = ([x, y]: XY): XY => [snap(x), snap(y)]
