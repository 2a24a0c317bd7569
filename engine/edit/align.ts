import { type Box, boxOf } from '../kinds/place'
import type { Design, Part, PartId } from '../model/design'
import { partById } from '../model/lookup'
import type { EditOf } from './edit'
import { snap } from './grid'

export type Alignment = 'left' | 'centre' | 'right' | 'top' | 'middle' | 'bottom'

/** Moves parts so that their boxes share an edge or a middle line of the box around them all. */
export function alignEdit(design: Design, ids: readonly PartId[], to: Alignment): EditOf<'move'> {
  const parts = chosen(design, ids)
  const around = boundsOf(parts)
  return { do: 'move', to: parts.map((p) => ({ part: p.id, ...aligned(boxOf(p), around, to) })) }
}

function aligned({ x, y, w, h }: Box, around: Box, to: Alignment): { x: number; y: number } {
  switch (to) {
    case 'left':
      return { x: around.x, y }
    case 'right':
      return { x: around.x + around.w - w, y }
    case 'centre':
      return { x: snap(around.x + (around.w - w) / 2), y }
    case 'top':
      return { x, y: around.y }
    case 'bottom':
      return { x, y: around.y + around.h - h }
    case 'middle':
      return { x, y: snap(around.y + (around.h - h) / 2) }
  }
}

/** Moves the parts between the two outermost so that the gaps are alike, to the nearest grid line. */
export function distributeEdit(design: Design, ids: readonly PartId[], along: 'x' | 'y'): EditOf<'move'> {
  const size = along === 'x' ? 'w' : 'h'
  const parts = [...chosen(design, ids)].sort((a, b) => a[along] - b[along])
  const boxes = parts.map((p) => boxOf(p))
  const around = boundsOf(parts)
  const gap = (around[size] - boxes.reduce((sum, b) => sum + b[size], 0)) / Math.max(1, parts.length - 1)
  let at = around[along]
  const to = parts.map((p, i) => {
    const place = i === parts.length - 1 ? p[along] : snap(at)
    at += boxes[i]![size] + gap
    return { part: p.id, x: p.x, y: p.y, [along]: place }
  })
  return { do: 'move', to }
}

const chosen = (design: Design, ids: readonly PartId[]): readonly Part[] =>
  [...new Set(ids)].map((id) => partById(design, id)).filter((p) => p !== undefined)

/** The box around parts. */
export function boundsOf(parts: readonly Part[]): Box {
  const boxes = parts.map((p) => boxOf(p))
  const x = Math.min(...boxes.map((b) => b.x))
  const y = Math.min(...boxes.map((b) => b.y))
  return {
    x,
    y,
    w: Math.max(...boxes.map((b) => b.x + b.w)) - x,
    h: Math.max(...boxes.map((b) => b.y + b.h)) - y,
  }
}
