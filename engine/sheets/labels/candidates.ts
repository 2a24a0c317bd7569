import type { Millimetres } from '../../units'
import type { LabelRequest, LabelSide, Rect, Stretch } from './request'

/** A place beside a stretch, or farther off. */
export interface Candidate extends Rect {
  readonly turn: 0 | 90
}

/** Free strip between a label and what it stands beside. */
export const BESIDE: Millimetres = 0.6
/** Steps along a stretch, and outwards. */
const STEP: Millimetres = 1.25
const OUTWARD: Millimetres = 2.5
const REACH: Millimetres = 150
/** Steps along a stretch for places farther off. */
const ALONG: Millimetres = 2.5
/** How far a leader runs sideways, as a part of its distance. */
const SLANT = 0.6

const SIDES: readonly LabelSide[] = ['above', 'below', 'left', 'right']

/**
 * Places beside what the label names, best first: on stretches that are long enough from the middle outwards, then
 * on the shorter ones; level stretches carry level text above or below, upright ones turned text left or right.
 */
export function* besideCandidates(label: LabelRequest): Generator<Candidate> {
  const sides = label.sides ?? SIDES
  const isLong = (s: Stretch): boolean => Math.abs(s.x2 - s.x1) + Math.abs(s.y2 - s.y1) >= label.w
  for (const s of label.near.filter((n) => isLong(n))) yield* alongStretch(label, s, sides)
  for (const s of label.near.filter((n) => !isLong(n))) yield* alongStretch(label, s, sides)
}

function* alongStretch(label: LabelRequest, s: Stretch, sides: readonly LabelSide[]): Generator<Candidate> {
  const { w, h } = label
  if (s.x1 === s.x2 && s.y1 === s.y2) {
    for (const side of sides) yield* aroundPoint(label, s.x1, s.y1, side)
  } else if (s.y1 === s.y2) {
    for (const x of fromMiddle(Math.min(s.x1, s.x2), Math.max(s.x1, s.x2), w))
      for (const side of sides)
        if (side === 'above') yield { x, y: s.y1 - BESIDE - h, w, h, turn: 0 }
        else if (side === 'below') yield { x, y: s.y1 + BESIDE, w, h, turn: 0 }
  } else {
    for (const y of fromMiddle(Math.min(s.y1, s.y2), Math.max(s.y1, s.y2), w))
      for (const side of sides)
        if (side === 'left') yield { x: s.x1 - BESIDE - h, y, w: h, h: w, turn: 90 }
        else if (side === 'right') yield { x: s.x1 + BESIDE, y, w: h, h: w, turn: 90 }
  }
}

function* aroundPoint({ w, h }: LabelRequest, x: number, y: number, side: LabelSide): Generator<Candidate> {
  const level = { w, h, turn: 0 } as const
  if (side === 'above' || side === 'below') {
    const top = side === 'above' ? y - BESIDE - h : y + BESIDE
    for (const left of [x - w / 2, x, x - w]) yield { x: left, y: top, ...level }
  } else {
    const left = side === 'left' ? x - BESIDE - w : x + BESIDE
    for (const top of [y - h / 2, y - h, y]) yield { x: left, y: top, ...level }
  }
}

/** Starts of a text of this width on a stretch, from the middle outwards; shorter stretches have it overhang a little. */
function* fromMiddle(a: number, b: number, width: number, step = STEP): Generator<number> {
  const middle = (a + b - width) / 2
  const slack = Math.max(Math.abs(b - a - width) / 2, 0)
  yield middle
  for (let d = step; d <= slack + 1e-9; d += step) {
    yield middle - d
    yield middle + d
  }
}

interface Point {
  readonly x: Millimetres
  readonly y: Millimetres
}

/** A place farther off. Where its leader may go to is worked out for the few places that are free. */
export interface FarCandidate extends Candidate {
  /** Points of what it names, best first. */
  readonly anchors: () => readonly Point[]
}

/**
 * Places farther off, in growing distance up to its reach: along level stretches above and below, along upright ones
 * left and right, beyond the ends of both, around points. Leaders slant, so that none is taken for a conductor.
 */
export function* outwardCandidates(label: LabelRequest): Generator<FarCandidate> {
  const { w, h, near, reach = REACH } = label
  for (let d = OUTWARD; d <= reach; d += OUTWARD) {
    const slant = SLANT * d
    for (const s of near) {
      if (s.x1 === s.x2 && s.y1 === s.y2) yield* ringAround(label, s.x1, s.y1, d)
      else if (s.y1 === s.y2) {
        const [a, b] = [Math.min(s.x1, s.x2), Math.max(s.x1, s.x2)]
        for (const x of fromMiddle(a - w / 2 - d, b + w / 2 + d, w, ALONG)) {
          const anchors = () => aside(x + w / 2, a, b, slant).map((at) => ({ x: at, y: s.y1 }))
          for (const y of [s.y1 - d - h, s.y1 + d]) yield { x, y, w, h, turn: 0, anchors }
        }
        for (const [end, x] of [
          [a, a - d - w],
          [b, b + d],
        ] as const)
          yield { x, y: s.y1 - h / 2, w, h, turn: 0, anchors: () => [{ x: end, y: s.y1 }] }
      } else {
        const [a, b] = [Math.min(s.y1, s.y2), Math.max(s.y1, s.y2)]
        for (const y of fromMiddle(a - h / 2 - d, b + h / 2 + d, h, ALONG)) {
          const anchors = () => aside(y + h / 2, a, b, slant).map((at) => ({ x: s.x1, y: at }))
          for (const x of [s.x1 + d, s.x1 - d - w]) yield { x, y, w, h, turn: 0, anchors }
        }
        for (const [end, y] of [
          [a, a - d - h],
          [b, b + d],
        ] as const)
          yield { x: s.x1 - w / 2, y, w, h, turn: 0, anchors: () => [{ x: s.x1, y: end }] }
      }
    }
  }
}

/** Points on the stretch from a to b: a little to either side of `at`, first towards the middle, and nearest to it. */
function aside(at: Millimetres, a: Millimetres, b: Millimetres, by: Millimetres): Millimetres[] {
  const towards = at < (a + b) / 2 ? by : -by
  const points = [at + towards, at - towards, at].map((p) => Math.min(b, Math.max(a, p)))
  return points.filter((p, i) => points.indexOf(p) === i)
}

function* ringAround({ w, h }: LabelRequest, x: number, y: number, d: Millimetres): Generator<FarCandidate> {
  for (let t = -d; t < d; t += OUTWARD)
    for (const [dx, dy] of [
      [t, -d],
      [d, t],
      [-t, d],
      [-d, -t],
    ] as const)
      yield { x: x + dx - w / 2, y: y + dy - h / 2, w, h, turn: 0, anchors: () => [{ x, y }] }
}
