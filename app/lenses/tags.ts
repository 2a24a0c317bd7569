import type { XY } from '../../engine'

/** Words that are put on the drawing where there is room, the weightiest first. Millimetres throughout. */

export interface Box {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

export interface Wanted {
  readonly key: string
  readonly text: string
  readonly rank: number
  /** Where it may stand, best first. */
  readonly places: readonly Place[]
  /** What it may cover where there is no other room: the part that it speaks of. */
  readonly covers?: Box
  /** A frame around it; absent: none. */
  readonly boxed?: 'thin' | 'strong'
}

/** The middle of a text, and whether it reads upwards. */
export interface Place {
  readonly at: XY
  readonly turn: 0 | 90
}

export interface Tag extends Place {
  readonly key: string
  readonly text: string
  readonly boxed: 'thin' | 'strong' | null
}

/** Width and height of a text. */
export type Measure = (text: string) => readonly [number, number]

/** Puts each where it meets nothing: neither what is taken already nor one that was put before. O(wanted × all). */
export function placeTags(wanted: readonly Wanted[], taken: readonly Box[], measure: Measure): Tag[] {
  const used = [...taken]
  const tags: Tag[] = []
  for (const { key, text, places, covers, boxed = null } of [...wanted].sort((a, b) => b.rank - a.rank)) {
    const [w, h] = measure(text)
    for (const place of places) {
      const box = boxAt(place, w, h)
      if (used.some((other) => other !== covers && meet(box, other))) continue
      used.push(box)
      tags.push({ key, text, boxed, ...place })
      break
    }
  }
  return tags
}

export const boxAt = ({ at: [x, y], turn }: Place, w: number, h: number): Box =>
  turn === 0 ? { x: x - w / 2, y: y - h / 2, w, h } : { x: x - h / 2, y: y - w / 2, w: h, h: w }

/** Do two boxes overlap? */
export const meet = (a: Box, b: Box): boolean =>
  a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h

/** Where along a stretch a figure may stand, as a part of it. */
const ALONG = [0.5, 0.3, 0.7]

/** Places on the straight stretches of a line that are long enough for a text, the longest first. */
export function placesOn(points: readonly XY[], width: number): Place[] {
  const stretches = points
    .slice(1)
    .map((b, i) => {
      const a = points[i]!
      return { a, b, length: Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1]) }
    })
    .filter((s) => s.length >= width * 1.2)
    .sort((s, t) => t.length - s.length)
  return stretches.flatMap(({ a, b }) =>
    ALONG.map((k): Place => {
      const at: XY = [a[0] + (b[0] - a[0]) * k, a[1] + (b[1] - a[1]) * k]
      return { at, turn: a[0] === b[0] ? 90 : 0 }
    }),
  )
}

/** Places beside the middles of the straight stretches of a line, the longest first, whatever their length. */
export function placesBeside(points: readonly XY[], size: readonly [number, number]): Place[] {
  const stretches = points.slice(1).map((b, i) => ({ a: points[i]!, b }))
  const length = ({ a, b }: (typeof stretches)[number]) => Math.abs(b[0] - a[0]) + Math.abs(b[1] - a[1])
  return stretches
    .sort((s, t) => length(t) - length(s))
    .flatMap(({ a, b }) => {
      const middle = { x: (a[0] + b[0]) / 2 - 1, y: (a[1] + b[1]) / 2 - 1, w: 2, h: 2 }
      return placesAround(middle, size).slice(0, -1)
    })
}

/** Places around a box for a text: below, above, beside it, then at its corners, then on it. */
export function placesAround({ x, y, w, h }: Box, [tw, th]: readonly [number, number]): Place[] {
  const gap = 0.5
  const middle: XY = [x + w / 2, y + h / 2]
  const [below, above] = [y + h + gap + th / 2, y - gap - th / 2]
  const [left, right] = [x - gap - tw / 2, x + w + gap + tw / 2]
  const at: readonly XY[] = [
    [middle[0], below],
    [middle[0], above],
    [left, middle[1]],
    [right, middle[1]],
    ...[below, above].flatMap((v): XY[] => [
      [x + tw / 2, v],
      [x + w - tw / 2, v],
      [left, v],
      [right, v],
    ]),
    middle,
  ]
  return at.map((p) => ({ at: p, turn: 0 }))
}
