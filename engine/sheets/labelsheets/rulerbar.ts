import { line } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { textMark } from '../block'

/** A bar of 100 mm with a stroke for each millimetre, from its left or upper end: what shows a print that is not 1:1. */
export function rulerBar(x: Millimetres, y: Millimetres, upright = false): Mark[] {
  const at = (along: Millimetres, across: Millimetres) =>
    upright ? ([x + across, y + along] as const) : ([x + along, y + across] as const)
  const stroke = (along: Millimetres, length: Millimetres): Mark =>
    line([...at(along, 0), ...at(along, length)], { pen: 'thin' })
  return [
    line([...at(0, 0), ...at(100, 0)], { pen: 'line' }),
    ...Array.from({ length: 101 }, (_, mm) => stroke(mm, mm % 10 === 0 ? 4 : mm % 5 === 0 ? 3 : 2)),
    ...Array.from({ length: 11 }, (_, cm) => {
      const [tx, ty] = at(cm * 10, upright ? 5 : 7)
      return textMark(
        tx,
        upright ? ty + 0.9 : ty,
        { text: `${cm * 10}` },
        upright ? {} : { anchor: 'middle' },
      )
    }),
  ]
}
