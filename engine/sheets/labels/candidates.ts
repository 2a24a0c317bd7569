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
const REACH: Millimetres = 150
const OUTWARD: Millimetres = 2.5
const ANCHORS_APART: Millimetres = 10

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
function* fromMiddle(a: number, b: number, width: number): Generator<number> {
  const middle = (a + b - width) / 2
  const slack = Math.max(Math.abs(b - a - width) / 2, 0)
  yield middle
  for (let d = STEP; d <= slack + 1e-9; d += STEP) {
    yield middle - d
    yield middle + d
  }
}

/** A place farther off, and the point of what it names that its leader goes to. */
export interface FarCandidate extends Candidate {
  readonly anchor: { readonly x: Millimetres; readonly y: Millimetres }
}

/** Places farther off, in rings of growing distance around points of what the label names. */
export function* outwardCandidates(label: LabelRequest): Generator<FarCandidate> {
  const { w, h } = label
  const anchors = label.near.flatMap(anchorsOf)
  for (let d = OUTWARD; d <= (label.reach ?? REACH); d += OUTWARD)
    for (const anchor of anchors)
      for (let t = -d; t < d; t += OUTWARD)
        for (const [dx, dy] of [
          [t, -d],
          [d, t],
          [-t, d],
          [-d, -t],
        ] as const)
          yield { x: anchor.x + dx - w / 2, y: anchor.y + dy - h / 2, w, h, turn: 0, anchor }
}

/** The middle of a stretch and points along it, the nearest to the middle first. */
function anchorsOf({ x1, y1, x2, y2 }: Stretch): FarCandidate['anchor'][] {
  const length = Math.abs(x2 - x1) + Math.abs(y2 - y1)
  const half = Math.floor(length / 2 / ANCHORS_APART)
  const at = (d: Millimetres): FarCandidate['anchor'] => {
    const part = length === 0 ? 0 : 0.5 + d / length
    return { x: x1 + (x2 - x1) * part, y: y1 + (y2 - y1) * part }
  }
  return [
    at(0),
    ...Array.from({ length: half }, (_, k) => [at(-(k + 1) * ANCHORS_APART), at((k + 1) * ANCHORS_APART)]),
  ].flat()
}
