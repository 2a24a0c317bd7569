import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import { LARGE, LEAST, moved, TITLE, textMark, USUAL } from '../block'
import { type Weight, widthOf, wrapTo } from '../measure'
import { generalSign, signHeight, warningSign } from '../warningsign'
import type { Label, LabelSign } from './label'

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

/** Share of the width that a warning sign may take. */
const SIGN_SHARE = 0.28
const SIGN_GAP: Millimetres = 1.5

/**
 * Words of a label as large as they fit, in the middle of it, a warning sign to the left of them; without a sign the first
 * line is not folded. `pad`: free room inside the edge.
 */
export function labelMarks(
  { lines, sign }: Pick<Label, 'lines' | 'sign'>,
  w: Millimetres,
  h: Millimetres,
  pad: Millimetres = PAD,
): LabelMarks {
  return sign ? withSign(lines, sign, w, h, pad) : wordMarks(lines, w, h, pad, false)
}

/** `folds`: the first line may be folded between its words. */
function wordMarks(
  lines: readonly string[],
  w: Millimetres,
  h: Millimetres,
  pad: Millimetres,
  folds: boolean,
): LabelMarks {
  const [roomW, roomH] = [w - 2 * pad, h - 2 * pad]
  for (const [first, others] of HEIGHTS) {
    const set = setIn(lines, first, others, roomW)
    const [head = ''] = lines
    const unbroken =
      (folds ? head.split(' ') : [head]).every((word) => widthOf(word, first, 'bold') <= roomW) &&
      lines.slice(1).every((l) => l.split(' ').every((word) => widthOf(word, others) <= roomW))
    if (unbroken && heightOf(set) <= roomH) return { marks: placed(set, w, h), cut: false }
  }
  const set: Line[] = []
  for (const line of setIn(lines, LEAST, LEAST, roomW)) if (heightOf([...set, line]) <= roomH) set.push(line)
  return { marks: placed(set, w, h), cut: true }
}

function withSign(
  lines: readonly string[],
  sign: LabelSign,
  w: Millimetres,
  h: Millimetres,
  pad: Millimetres,
): LabelMarks {
  const size = Math.min(w * SIGN_SHARE, (h - 2 * pad) / signHeight(1))
  const left = pad + size + SIGN_GAP - pad
  const words = wordMarks(lines, w - left, h, pad, true)
  const draw = sign === 'W012' ? warningSign : generalSign
  return {
    marks: [...draw(pad, (h - signHeight(size)) / 2, size), ...moved(words.marks, left, 0)],
    cut: words.cut,
  }
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
