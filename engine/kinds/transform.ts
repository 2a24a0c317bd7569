import type { Turn } from '../model/design'
import type { Side } from '../model/kind'
import type { Mark, TextMark, XY } from '../model/marks'
import type { Millimetres } from '../units'
import { textWidth } from './draw'

/** How a symbol stands: mirrored left to right in its own box first, then turned clockwise. */
export interface Stance {
  readonly w: Millimetres
  readonly h: Millimetres
  readonly turn: Turn
  readonly mirrored: boolean
}

/** A point of the unturned box in the turned one, both from their own top left corner. */
export function turnPoint([x, y]: XY, { w, h, turn, mirrored }: Stance): XY {
  const mx = mirrored ? w - x : x
  switch (turn) {
    case 0:
      return [mx, y]
    case 90:
      return [h - y, mx]
    case 180:
      return [w - mx, h - y]
    case 270:
      return [y, w - mx]
  }
}

const CLOCKWISE: readonly Side[] = ['up', 'right', 'down', 'left']

export function turnSide(side: Side, { turn, mirrored }: Stance): Side {
  const flipped = mirrored && side === 'left' ? 'right' : mirrored && side === 'right' ? 'left' : side
  return CLOCKWISE[(CLOCKWISE.indexOf(flipped) + turn / 90) % 4]!
}

export function turnMark(mark: Mark, s: Stance): Mark {
  switch (mark.is) {
    case 'line':
      return { ...mark, points: mark.points.map((p) => turnPoint(p, s)) }
    case 'circle':
      return { ...mark, at: turnPoint(mark.at, s) }
    case 'arc': {
      const [from, to] = s.mirrored ? [180 - mark.to, 180 - mark.from] : [mark.from, mark.to]
      return { ...mark, at: turnPoint(mark.at, s), from: from + s.turn, to: to + s.turn }
    }
    case 'text':
      return turnText(mark, s)
  }
}

/** Words up to this long, such as terminal marks, stay upright in every stance; longer ones read along the symbol. */
const SHORT: Millimetres = 5

/** Text keeps the middle of its place and its upright reading; long text of a symbol on its side reads upwards. */
function turnText(mark: TextMark, s: Stance): Mark {
  const width = textWidth(mark.text, mark.height)
  const anchor = mark.anchor ?? 'start'
  const shift = anchor === 'start' ? width / 2 : anchor === 'end' ? -width / 2 : 0
  const middle: XY = [mark.at[0] + shift, mark.at[1] - mark.height / 2]
  const [x, y] = turnPoint(middle, s)
  const onSide = s.turn === 90 || s.turn === 270
  if (!onSide) {
    // An anchor at the outer edge keeps its edge, so that text stays clear of what it stands beside.
    const swaps = s.mirrored !== (s.turn === 180)
    const turned = swaps ? SWAPPED[anchor] : anchor
    const back = turned === 'start' ? -width / 2 : turned === 'end' ? width / 2 : 0
    return { ...mark, at: [x + back, y + mark.height / 2], anchor: turned }
  }
  if (width <= SHORT) return { ...mark, at: [x, y + mark.height / 2], anchor: 'middle' }
  return { ...mark, at: [x + mark.height / 2, y], anchor: 'middle', turn: 90 }
}

const SWAPPED = { start: 'end', end: 'start', middle: 'middle' } as const
