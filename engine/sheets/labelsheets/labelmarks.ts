import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { LARGE, LEAST, TITLE, textMark, USUAL } from '../block'
import { type Weight, widthOf, wrapTo } from '../measure'

/** Free room inside the edge of a label: printers are off by a millimetre. */
const PAD: Millimetres = 1.5
const LEADING = 1.4

/** Lettering of the first line and of the others, largest first. */
const HEIGHTS = [
  [TITLE, LARGE],
  [TITLE, USUAL],
  [LARGE, USUAL],
  [LARGE, LEAST],
  [USUAL, LEAST],
  [LEAST, LEAST],
] as const

export interface LabelMarks {
  /** From the top left corner of the label. */
  readonly marks: readonly Mark[]
  /** Words were broken, or had no room. */
  readonly cut: boolean
}

interface Line {
  readonly text: string
  readonly height: Millimetres
  readonly weight: Weight
}

/** Words of a label as large as they fit, in the middle of it; the first line is not folded. */
export function labelMarks(lines: readonly string[], w: Millimetres, h: Millimetres): LabelMarks {
  const [roomW, roomH] = [w - 2 * PAD, h - 2 * PAD]
  for (const [first, others] of HEIGHTS) {
    const set = setIn(lines, first, others, roomW)
    const [head = ''] = lines
    const unbroken =
      widthOf(head, first, 'bold') <= roomW &&
      lines.slice(1).every((l) => l.split(' ').every((word) => widthOf(word, others) <= roomW))
    if (unbroken && heightOf(set) <= roomH) return { marks: placed(set, w, h), cut: false }
  }
  const set: Line[] = []
  for (const line of setIn(lines, LEAST, LEAST, roomW)) if (heightOf([...set, line]) <= roomH) set.push(line)
  return { marks: placed(set, w, h), cut: true }
}

const setIn = (
  lines: readonly string[],
  first: Millimetres,
  others: Millimetres,
  width: Millimetres,
): Line[] =>
  lines.flatMap((text, i) => {
    const [height, weight] = i === 0 ? [first, 'bold' as const] : [others, 'regular' as const]
    return wrapTo(width, text, height, weight).map((t) => ({ text: t, height, weight }))
  })

const heightOf = (set: readonly Line[]): Millimetres => set.reduce((sum, l) => sum + l.height * LEADING, 0)

function placed(set: readonly Line[], w: Millimetres, h: Millimetres): Mark[] {
  let y = (h - heightOf(set)) / 2
  return set.map(({ text, height, weight }) => {
    y += height * LEADING
    return textMark(w / 2, y - height * (LEADING - 1) * 0.5, { text, height, weight }, { anchor: 'middle' })
  })
}
