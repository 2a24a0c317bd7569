import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'

/** Marks made smaller with their lettering, and moved. Pens keep their width. */
export function scaled(marks: readonly Mark[], size: number, x: Millimetres, y: Millimetres): Mark[] {
  const at = ([px, py]: readonly [number, number]) => [px * size + x, py * size + y] as const
  return marks.map((mark): Mark => {
    if (mark.is === 'line') return { ...mark, points: mark.points.map(at) }
    if (mark.is === 'text') return { ...mark, at: at(mark.at), height: mark.height * size }
    return { ...mark, at: at(mark.at), r: mark.r * size }
  })
}
