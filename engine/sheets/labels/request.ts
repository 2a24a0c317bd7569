import type { Millimetres } from '../../units'

export interface Rect {
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
}

/** A straight stretch, level or upright; a point where both ends are the same. */
export interface Stretch {
  readonly x1: Millimetres
  readonly y1: Millimetres
  readonly x2: Millimetres
  readonly y2: Millimetres
}

export type LabelSide = 'above' | 'below' | 'left' | 'right'

export interface LabelRequest {
  readonly id: string
  /** Size of the upright text. */
  readonly w: Millimetres
  readonly h: Millimetres
  /** What it may stand beside, best first: stretches of its conductor, or points at its part. */
  readonly near: readonly Stretch[]
  /** The highest are placed first. */
  readonly priority: number
  /** Sides that it may stand on, best first. Default: above, below, left, right. */
  readonly sides?: readonly LabelSide[]
  /** How far off its middle may stand with a leader; 0: beside what it names or not at all. Default: as far as it takes. */
  readonly reach?: Millimetres
}

export interface PlacedLabel extends Rect {
  readonly id: string
  /** 90: turned, reads from the right-hand side of the sheet; x, y, w, h are those of the turned text. */
  readonly turn: 0 | 90
  /** From the label to what it names, where it does not stand beside it. */
  readonly leader?: readonly [{ x: Millimetres; y: Millimetres }, { x: Millimetres; y: Millimetres }]
  /** False: there was no room anywhere near; it lies on something and is to be reported. */
  readonly placed: boolean
}

export interface LabelObstacles {
  readonly boxes: readonly Rect[]
  readonly segments: readonly Stretch[]
}
