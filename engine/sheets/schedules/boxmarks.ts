import { line, rect } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { LEAST, textMark } from '../block'

/** Side of a box that is ticked by hand. */
export const BOX: Millimetres = 3.2

/** A box at the top left corner given: 'done' is ticked; 'again' stands open with an asterisk, as it was done before the drawing changed. */
export function boxMarks(x: Millimetres, y: Millimetres, state: string): Mark[] {
  const box = rect(x, y, BOX, BOX, { pen: 'line' })
  if (state === 'done')
    return [box, line([x + 0.6, y + 1.7, x + 1.3, y + 2.5, x + 2.7, y + 0.6], { pen: 'strong' })]
  if (state === 'again') return [box, textMark(x + BOX + 0.4, y + LEAST, { text: '*', weight: 'bold' })]
  return [box]
}
