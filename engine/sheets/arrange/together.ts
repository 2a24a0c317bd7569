import type { Millimetres } from '../../units'
import type { Block } from './block'
import type { Place } from './part'

/** Blocks put together into larger ones. */

/** Blocks one below the other, left edges in line. */
export function below(blocks: readonly Block[], gap: Millimetres): Block {
  const places = new Map<number, Place>()
  let [y, w] = [0, 0]
  for (const b of blocks) {
    for (const [i, p] of b.places) places.set(i, { x: p.x, y: p.y + y })
    y += b.h + gap
    w = Math.max(w, b.w)
  }
  return { w, h: Math.max(0, y - gap), places }
}

/** Blocks one beside the other, tops in line. */
export function beside(blocks: readonly Block[], gap: Millimetres): Block {
  const places = new Map<number, Place>()
  let [x, h] = [0, 0]
  for (const b of blocks) {
    for (const [i, p] of b.places) places.set(i, { x: p.x + x, y: p.y })
    x += b.w + gap
    h = Math.max(h, b.h)
  }
  return { w: Math.max(0, x - gap), h, places }
}

/** Blocks in rows of at most this width, in their order. */
export function inRows(blocks: readonly Block[], width: Millimetres, gap: Millimetres): Block {
  const rows: Block[][] = []
  let used = Infinity
  for (const b of blocks) {
    if (used + gap + b.w > width) {
      rows.push([])
      used = -gap
    }
    rows.at(-1)!.push(b)
    used += gap + b.w
  }
  return below(
    rows.map((row) => beside(row, gap)),
    gap,
  )
}

/** Blocks in columns of at most this height, each in the first that has room. */
export function inColumns(blocks: readonly Block[], height: Millimetres, gap: Millimetres): Block {
  const columns: { blocks: Block[]; used: Millimetres }[] = []
  for (const b of blocks) {
    const column = columns.find((c) => c.used + gap + b.h <= height)
    if (column) {
      column.blocks.push(b)
      column.used += gap + b.h
    } else columns.push({ blocks: [b], used: b.h })
  }
  return beside(
    columns.map((c) => below(c.blocks, gap)),
    gap,
  )
}
