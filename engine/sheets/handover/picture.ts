import { line, outline, rect } from '../../kinds/draw'
import type { Mark } from '../../model/marks'
import type { Millimetres } from '../../units'
import type { PictureBand, PictureWords } from '../../words/handover/book'
import { moved, textMark } from '../block'
import type { FlowBlock } from '../flow'
import { together } from '../flow'
import { widthOf } from '../measure'
import { BODY, headingLines, lines, SMALL, titleBlocks } from './type'

/** Heights tried, the largest first, for a picture on one page. */
const HEIGHTS: readonly Millimetres[] = [BODY, 4.1, 3.8, SMALL, 3.3, 3.1, 2.9, 2.7, 2.5]
const GAP = 3
const PAD = 2.2
const ARROW = 8

/** The system as blocks in three bands, power flowing down; where a page is too small for them, as a list. */
export function pictureBlocks(picture: PictureWords, width: Millimetres, page: Millimetres): FlowBlock[] {
  for (const height of HEIGHTS) {
    const block = drawn(picture, width, height)
    if (block.h < page * 0.96) return [block]
  }
  return listedBlocks(picture, width)
}

const listedBlocks = ({ charging, stores, divided, note }: PictureWords, width: Millimetres): FlowBlock[] => [
  ...[charging, stores, divided].flatMap(({ title, blocks }) =>
    blocks.length === 0
      ? []
      : [
          ...headingLines(title, width),
          ...blocks.flatMap((b) => [
            ...titleBlocks(b.title, b.place, width),
            ...b.lines.flatMap((text) => lines(text, width)),
          ]),
        ],
  ),
  ...lines(note, width),
]

function drawn({ charging, stores, divided, note }: PictureWords, width: Millimetres, height: Millimetres) {
  const bands = [charging, stores, divided].filter((b) => b.blocks.length > 0)
  const marks: Mark[] = []
  let y = 0
  bands.forEach((band, i) => {
    if (i > 0) {
      const x = width / 2
      marks.push(...downArrow(x, y + 1))
      y += ARROW + 2
    }
    const { h, marks: own } = bandBlock(band, width, height)
    marks.push(...moved(own, 0, y))
    y += h
  })
  const last = together(lines(note, width, { height, before: GAP }))
  return { h: y + last.h, marks: [...marks, ...moved(last.marks, 0, y)] }
}

/** Power flows this way. */
const downArrow = (x: Millimetres, y: Millimetres): Mark[] => [
  line([x, y, x, y + ARROW - 4], { pen: 'bar' }),
  outline([x, y + ARROW, x - 3.2, y + ARROW - 5, x + 3.2, y + ARROW - 5], { pen: 'thin', fill: 'ink' }),
]

/** Letters of the longest text in a block that stands two abreast, and three; longer ones have a row of their own. */
const HALF = 70
const THIRD = 24

function columnsOf(blocks: PictureBand['blocks']): number {
  const longest = Math.max(...blocks.flatMap((b) => [b.title, b.place, ...b.lines]).map((t) => t.length))
  return Math.min(blocks.length, longest <= THIRD ? 3 : longest <= HALF ? 2 : 1)
}

/** A band on a tint with its blocks in rows; those of a row are equally high. */
function bandBlock({ title, blocks }: PictureBand, width: Millimetres, height: Millimetres): FlowBlock {
  const columns = columnsOf(blocks)
  const w = (width - 2 * PAD - GAP * (columns - 1)) / columns
  const marks: Mark[] = []
  let y = PAD + height * 1.9
  marks.push(textMark(PAD, PAD + height * 1.1, { text: title, height, weight: 'bold' }))
  for (let i = 0; i < blocks.length; i += columns) {
    const row = blocks.slice(i, i + columns).map((b) => insideOf(b, w - 2 * PAD, height))
    const h = Math.max(...row.map((b) => b.h)) + 2 * PAD
    row.forEach((b, k) => {
      const x = PAD + k * (w + GAP)
      marks.push(rect(x, y, w, h, { pen: 'strong', fill: 'paper' }), ...moved(b.marks, x + PAD, y + PAD))
    })
    y += h + (i + columns < blocks.length ? GAP * 0.7 : 0)
  }
  y += PAD
  return { h: y, marks: [rect(0, 0, width, y, { pen: 'thin', ink: 'faint', fill: 'tint' }), ...marks] }
}

/** Title and place in one line where there is room, then what is said of the block. */
function insideOf(block: PictureBand['blocks'][number], width: Millimetres, height: Millimetres): FlowBlock {
  const name = lines(block.title, width, { height, weight: 'bold', after: 0 })
  const at = widthOf(block.title, height, 'bold') + height
  const beside = at + widthOf(block.place, height) <= width
  const place = block.place === '' ? [] : lines(block.place, width, { height, ink: 'faint', after: 0 })
  const texts = together(block.lines.flatMap((text) => lines(text, width, { height, after: 0 })))
  const head = together(beside ? name : [...name, ...place])
  return {
    h: head.h + texts.h,
    marks: [
      ...head.marks,
      ...(beside ? place.flatMap((b) => moved(b.marks, at, 0)) : []),
      ...moved(texts.marks, 0, head.h),
    ],
  }
}
