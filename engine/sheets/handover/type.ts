import { line, rect } from '../../kinds/draw'
import type { Ink } from '../../model/marks'
import type { Millimetres } from '../../units'
import { moved, textMark } from '../block'
import type { FlowBlock } from '../flow'
import { cutTo, type Weight, widthOf, wrapTo } from '../measure'

/** Heights of capitals, mm: large type, so that a page still reads when it is as wide as a telephone. */
export const BODY: Millimetres = 4.4
export const SMALL: Millimetres = 3.5
export const HEAD: Millimetres = 5
export const CHAPTER: Millimetres = 7

/** From one line to the next, as a part of the height. */
export const PITCH = 1.62

export interface LineWords {
  readonly height?: Millimetres
  readonly weight?: Weight
  readonly ink?: Ink
  readonly indent?: Millimetres
  /** Stands before the first line, in the indent. */
  readonly lead?: string
  readonly before?: Millimetres
  readonly after?: Millimetres
  /** No more lines than these; the last one then ends in an ellipsis. */
  readonly most?: number
}

/** A text as one block a line: its first two lines and its last two never part. */
export function lines(text: string, width: Millimetres, words: LineWords = {}): FlowBlock[] {
  const {
    height = BODY,
    weight = 'regular',
    ink,
    indent = 0,
    lead,
    before = 0,
    after = height * 0.55,
    most = Number.POSITIVE_INFINITY,
  } = words
  const whole = wrapTo(width - indent, text, height, weight)
  const cut = () => cutTo(width - indent, whole.slice(most - 1).join(' '), height, weight)
  const set = whole.length > most ? [...whole.slice(0, most - 1), cut()] : whole
  return set.map((text, i): FlowBlock => {
    const top = i === 0 ? before : 0
    const baseline = top + height * 1.3
    const piece = { text, height, weight, ...(ink ? { ink } : {}) }
    return {
      h: top + height * PITCH + (i === set.length - 1 ? after : 0),
      marks: [
        ...(i === 0 && lead !== undefined
          ? [textMark(0, baseline, { text: lead, height, weight: 'bold' })]
          : []),
        textMark(indent, baseline, piece),
      ],
      leads: i < set.length - 1 && (i === 0 || i === set.length - 2),
    }
  })
}

/** The same, never parted from what comes after it. */
export const leading = (blocks: readonly FlowBlock[]): FlowBlock[] =>
  blocks.map((b) => ({ ...b, leads: true }))

/** A heading inside a chapter. */
export const headingLines = (text: string, width: Millimetres): FlowBlock[] =>
  leading(lines(text, width, { height: HEAD, weight: 'bold', before: 4, after: 1.6 }))

/** A hair line across. */
export const ruleBlock = (width: Millimetres): FlowBlock => ({
  h: 2.4,
  marks: [line([0, 1.2, width, 1.2], { pen: 'thin', ink: 'faint' })],
  leads: true,
})

/** Name of a thing in bold below a hair line; its place beside it, or below where there is no room. */
export function titleBlocks(title: string, place: string, width: Millimetres): FlowBlock[] {
  const at = widthOf(title, BODY, 'bold') + 4
  const beside = place !== '' && at + widthOf(place, SMALL) <= width
  const name = lines(title, width, { weight: 'bold', after: 1 })
  const where = lines(place, width, { height: SMALL, ink: 'faint', after: 1 })
  const [first, ...rest] = name
  if (beside && first) {
    const marks = where.flatMap((b) => moved(b.marks, at, (BODY - SMALL) * 1.3))
    return leading([ruleBlock(width), { ...first, marks: [...first.marks, ...marks] }, ...rest])
  }
  return leading([ruleBlock(width), ...name, ...(place === '' ? [] : where)])
}

/** A framed badge with a text in its middle. */
export const badge = (w: Millimetres, h: Millimetres, text: string, height: Millimetres) => [
  rect(0, 0, w, h, { pen: 'strong', fill: 'paper' }),
  textMark(w / 2, h / 2 + height / 2, { text, height, weight: 'bold' }, { anchor: 'middle' }),
]
