import { rect } from '../../kinds/draw'
import type { Millimetres } from '../../units'
import type { Piece, Row } from '../../words/handover/book'
import { moved } from '../block'
import type { FlowBlock } from '../flow'
import { listBlocks, together } from '../flow'
import { warningSign } from '../warningsign'
import { findBlocks } from './finds'
import { pictureBlocks } from './picture'
import { BODY, headingLines, lines, ruleBlock, titleBlocks } from './type'

/** Blocks of one piece of the book, for a column of a width and a page of a height. */
export function pieceBlocks(piece: Piece, width: Millimetres, page: Millimetres): FlowBlock[] {
  switch (piece.is) {
    case 'text':
      return lines(piece.text, width, piece.strong ? { weight: 'bold' } : {})
    case 'heading':
      return headingLines(piece.text, width)
    case 'list':
      return piece.items.flatMap((item, i) =>
        lines(item, width, { indent: 9, lead: piece.numbered ? `${i + 1}.` : '•' }),
      )
    case 'rows':
      return listBlocks(
        [],
        piece.rows.flatMap((row) => rowBlocks(row, width)),
      )
    case 'entry':
      return entryBlocks(piece, width, page)
    case 'find':
      return findBlocks(piece, width, page)
    case 'caution':
      return cautionBlocks(piece, width)
    case 'picture':
      return pictureBlocks(piece.picture, width, page)
  }
}

/** Label on the left, value on the right, a hair line below. */
function rowBlocks({ label, value }: Row, width: Millimetres): FlowBlock[] {
  const at = width * 0.56
  const left = together(lines(label, at - 4, { after: 0 }))
  const right = together(
    value.split('\n').flatMap((line) => lines(line, width - at, { weight: 'bold', after: 0 })),
  )
  const h = Math.max(left.h, right.h)
  const rule = ruleBlock(width)
  return [
    {
      h: h + rule.h + 0.8,
      marks: [...left.marks, ...moved(right.marks, at, 0), ...moved(rule.marks, 0, h + 0.4)],
    },
  ]
}

/** Entries up to this part of a page are not parted. */
const WHOLE = 0.35

function entryBlocks(
  { title, place, lines: texts }: Extract<Piece, { readonly is: 'entry' }>,
  width: Millimetres,
  page: Millimetres,
): FlowBlock[] {
  const blocks = [
    ...titleBlocks(title, place, width),
    ...texts.flatMap((text) => lines(text, width, { after: BODY * 0.9 })),
  ]
  const whole = together(blocks)
  return whole.h < page * WHOLE ? [whole] : blocks
}

/** The cautions under the warning sign, in a frame, unparted. */
function cautionBlocks(
  { items, last }: Extract<Piece, { readonly is: 'caution' }>,
  width: Millimetres,
): FlowBlock[] {
  const left = 26
  const inner = together([
    ...items.flatMap((item) => lines(item, width - left - 4, { indent: 7, lead: '•' })),
    ...lines(last, width - left - 4, { weight: 'bold', before: 2 }),
  ])
  const h = inner.h + 8
  return [
    {
      h: h + 4,
      marks: [
        rect(0, 0, width, h, { pen: 'strong', fill: 'tint' }),
        ...warningSign(4, 5, 18),
        ...moved(inner.marks, left, 4),
      ],
    },
  ]
}
