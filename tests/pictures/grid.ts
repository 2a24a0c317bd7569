/**
 * A picture brought down to a few hundred digits: how much ink stands in each cell of a grid, against the paper. It
 * bears other versions of a browser or a font renderer, and tells when something is gone, moved, doubled or turned dark.
 */
const COLUMNS = 18
const ROWS = 12
/** Digit 15 stands for this share of full contrast and more: thin lines count. */
const FULL = 0.25

/** One hexadecimal digit a cell, row by row. `grey`: luminance 0 to 255, row by row. O(pixels). */
export function gridOf(grey: Uint8Array, width: number, height: number): string {
  const paper = commonest(grey)
  let digits = ''
  for (let row = 0; row < ROWS; row++)
    for (let column = 0; column < COLUMNS; column++) {
      const [x0, x1] = [column, column + 1].map((c) => Math.floor((c * width) / COLUMNS)) as [number, number]
      const [y0, y1] = [row, row + 1].map((r) => Math.floor((r * height) / ROWS)) as [number, number]
      let ink = 0
      for (let y = y0; y < y1; y++)
        for (let x = x0; x < x1; x++) ink += Math.abs(grey[y * width + x]! - paper) / 255
      const share = ink / ((x1 - x0) * (y1 - y0))
      digits += Math.min(15, Math.round((15 * share) / FULL)).toString(16)
    }
  return digits
}

function commonest(grey: Uint8Array): number {
  const counts = new Uint32Array(256)
  for (const g of grey) counts[g]!++
  return counts.indexOf(Math.max(...counts))
}

/** How far two grids lie apart: the mean over all cells, and how many cells are clearly different. */
export function apart(a: string, b: string): { readonly mean: number; readonly cells: number } {
  if (a.length !== b.length) return { mean: 15, cells: Math.max(a.length, b.length) }
  let [sum, cells] = [0, 0]
  for (let i = 0; i < a.length; i++) {
    const d = Math.abs(Number.parseInt(a[i]!, 16) - Number.parseInt(b[i]!, 16))
    sum += d
    if (d > CLEARLY) cells++
  }
  return { mean: sum / a.length, cells }
}

/** Digits by which a cell is clearly different. */
const CLEARLY = 3

/** Two pictures are of the same thing: what other anti-aliasing does, and no more. */
export const alike = (a: string, b: string): boolean => {
  const { mean, cells } = apart(a, b)
  return mean <= 0.3 && cells <= 6
}
