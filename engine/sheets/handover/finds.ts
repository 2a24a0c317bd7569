import type { Millimetres } from '../../units'
import type { FuseLine, Piece } from '../../words/handover/book'
import { moved } from '../block'
import type { FlowBlock } from '../flow'
import { together } from '../flow'
import { widthOf } from '../measure'
import { BODY, badge, lines, SMALL, titleBlocks } from './type'

type Find = Extract<Piece, { readonly is: 'find' }>

/** Room for "Then" and for the ratings below it. */
const NEXT: Millimetres = 14
const RATING: Millimetres = 16

/** A dead thing: what must be on, its own fuse large, then the others in the order to look. Unparted where it can be. */
export function findBlocks(
  { title, place, first, fuses, next, note }: Find,
  width: Millimetres,
  page: Millimetres,
): FlowBlock[] {
  const [own, ...others] = fuses
  const blocks = [
    ...titleBlocks(title, place, width),
    ...(first === '' ? [] : lines(first, width, { height: SMALL, after: 1.2 })),
    ...(own ? [ownFuse(own, width)] : []),
    ...others.flatMap((fuse, i) => furtherFuse(fuse, width, i === 0 ? next : '')),
    ...(note === '' ? [] : lines(note, width, { height: SMALL, after: 0 })),
    { h: 2.6, marks: [] },
  ]
  const whole = together(blocks)
  return whole.h < page * 0.5 ? [whole] : blocks
}

const whereOf = ({ colour, place, remark }: FuseLine): string =>
  [colour, place, remark].filter((s) => s !== '').join(' · ')

/** Rating in a badge, as it is written on the fuse; beside it what it is called, and below colour and place. */
function ownFuse(fuse: FuseLine, width: Millimetres): FlowBlock {
  const w = Math.max(27, widthOf(fuse.rating, BODY, 'bold') + 5)
  const h = BODY * 2.5
  const at = w + 4
  const where = whereOf(fuse)
  const beside = together([
    ...lines(fuse.text, width - at, { weight: 'bold', after: 0 }),
    ...(where === '' ? [] : lines(where, width - at, { after: 0 })),
  ])
  return {
    h: Math.max(h, beside.h) + 2,
    marks: [
      ...(fuse.rating === '' ? [] : moved(badge(w, h, fuse.rating, BODY), 0, 0.9)),
      ...moved(beside.marks, at, 0),
    ],
  }
}

/** A fuse further up: one line where it can be. */
function furtherFuse(fuse: FuseLine, width: Millimetres, next: string): FlowBlock[] {
  const at = NEXT + RATING
  const where = whereOf(fuse)
  const text = where === '' ? fuse.text : `${fuse.text} · ${where}`
  const isShort = widthOf(fuse.rating, SMALL, 'bold') < RATING - 2
  const beside = lines(isShort ? text : `${fuse.rating}: ${text}`, width - at, { height: SMALL, after: 0 })
  const rating = isShort ? lines(fuse.rating, RATING, { height: SMALL, weight: 'bold' })[0]?.marks : []
  return beside.map((block, i) => ({
    ...block,
    marks: [
      ...(i === 0 && next !== '' ? (lines(next, NEXT, { height: SMALL, ink: 'faint' })[0]?.marks ?? []) : []),
      ...(i === 0 ? moved(rating ?? [], NEXT, 0) : []),
      ...moved(block.marks, at, 0),
    ],
  }))
}
