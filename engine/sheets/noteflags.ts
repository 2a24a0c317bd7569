import { outline } from '../kinds/draw'
import type { Mark } from '../model/marks'
import type { Millimetres } from '../units'
import { type Block, LEAST, textMark } from './block'

/** A pennant with the number of a drawing note in it. */
export const FLAG: { readonly w: Millimetres; readonly h: Millimetres } = { w: 5.6, h: 3.2 }
const GAP: Millimetres = 1

export const flagMarks = (x: Millimetres, y: Millimetres, number: number): Mark[] => [
  outline(
    [x, y, x + FLAG.w - 1.6, y, x + FLAG.w, y + FLAG.h / 2, x + FLAG.w - 1.6, y + FLAG.h, x, y + FLAG.h],
    {
      pen: 'line',
      fill: 'paper',
    },
  ),
  textMark(
    x + (FLAG.w - 1.6) / 2 + 0.2,
    y + FLAG.h / 2 + LEAST / 2,
    { text: `${number}`, weight: 'bold' },
    { anchor: 'middle' },
  ),
]

export interface FlaggedBlock extends Omit<Block, 'marks'> {
  readonly marks: readonly Mark[]
}

/** Words with flags below them, on the side that the words are set to. */
export function flagged(
  block: Block,
  numbers: readonly number[],
  anchor: 'start' | 'middle' | 'end',
): FlaggedBlock {
  if (numbers.length === 0) return block
  const row = numbers.length * (FLAG.w + GAP) - GAP
  const w = Math.max(block.w, row)
  const spare = (of: Millimetres): Millimetres =>
    anchor === 'start' ? 0 : anchor === 'end' ? w - of : (w - of) / 2
  const words = block.marks.map((m) => ({ ...m, at: [m.at[0] + spare(block.w), m.at[1]] as const }))
  const flags = numbers.flatMap((n, i) => flagMarks(spare(row) + i * (FLAG.w + GAP), block.h + 0.5, n))
  return { w, h: block.h + FLAG.h + 1, marks: [...words, ...flags] }
}
