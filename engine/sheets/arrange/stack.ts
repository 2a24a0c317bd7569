import type { Millimetres } from '../../units'

export const GRID: Millimetres = 2.5

export const snapUp = (mm: Millimetres): Millimetres => Math.ceil(mm / GRID - 1e-9) * GRID

/** Columns of parts, left to right, being given their heights. Tops: by part number. */
export interface Stack {
  readonly columns: readonly number[][]
  readonly top: Map<number, Millimetres>
  /** Free height below each part. */
  readonly gap: (part: number) => Millimetres
}
