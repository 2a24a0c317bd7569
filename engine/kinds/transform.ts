import type { Turn } from '../model/design'
import type { Side } from '../model/kind'
import type { LineMark, Mark, TextMark, XY } from '../model/marks'
import type { Millimetres } from '../units'

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
  if (mark.upright) return standingMark(mark, mark.upright, s)
  switch (mark.is) {
    case 'line':
      return inBothStands(mark, (p) => turnPoint(p, s))
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

/** A stroke with its points elsewhere, at rest and worked. */
const inBothStands = (mark: LineMark, to: (p: XY) => XY): LineMark => ({
  ...mark,
  points: mark.points.map(to),
  ...(mark.worked ? { worked: mark.worked.map(to) } : {}),
})

/** A sign moved to where its point has gone. */
function standingMark(mark: Mark, point: XY, s: Stance): Mark {
  const to = turnPoint(point, s)
  const moved = ([x, y]: XY): XY => [x + to[0] - point[0], y + to[1] - point[1]]
  return mark.is === 'line'
    ? { ...inBothStands(mark, moved), upright: to }
    : { ...mark, at: moved(mark.at), upright: to }
}

/**
 * Text centred on its place stays upright in every stance. Text with an end at its place reads along the symbol,
 * upwards where the symbol stands on its side, and keeps that end where it is.
 */
function turnText(mark: TextMark, s: Stance): Mark {
  const [x, y] = turnPoint([mark.at[0], mark.at[1] - mark.height / 2], s)
  const anchor = mark.anchor ?? 'start'
  const onSide = s.turn === 90 || s.turn === 270
  if (anchor === 'middle' || !onSide)
    return {
      ...mark,
      at: [x, y + mark.height / 2],
      anchor: s.mirrored !== (s.turn === 180) ? SWAPPED[anchor] : anchor,
    }
  return {
    ...mark,
    at: [x + mark.height / 2, y],
    anchor: s.mirrored !== (s.turn === 90) ? SWAPPED[anchor] : anchor,
    turn: 90,
  }
}

const SWAPPED = { start: 'end', end: 'start', middle: 'middle' } as const
