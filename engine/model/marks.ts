import type { Millimetres } from '../units'

/**
 * Marks: everything that is drawn, on screen and on paper, as plain data in millimetres; x to the right, y down.
 * One renderer a medium turns marks into SVG or PDF. Line widths follow the ISO 128 series, lettering the ISO 3098 heights.
 */

/** thin 0.18 mm, line 0.25 mm, strong 0.5 mm, bar 1.0 mm on an unscaled sheet. */
export type Pen = 'thin' | 'line' | 'strong' | 'bar'

/** Inks are roles; each theme and the paper give them a colour. Black-and-white reading must not need them. */
export type Ink =
  | 'ink'
  | 'faint'
  | 'positive'
  | 'negative'
  | 'data'
  | 'mains'
  | 'accent'
  | 'danger'
  | 'warning'
  | 'paper'
  | 'tint'

export type XY = readonly [x: Millimetres, y: Millimetres]

/** A sign that is read, not turned: it goes along with this point of its symbol, and keeps standing. */
interface Standing {
  readonly upright?: XY
}

export interface LineMark extends Standing {
  readonly is: 'line'
  readonly points: readonly XY[]
  /** Where it lies while the contact that it belongs to is worked: closed, or thrown over. Absent: it does not move. */
  readonly worked?: readonly XY[]
  readonly closed?: boolean
  readonly pen: Pen
  readonly ink?: Ink
  readonly fill?: Ink
  /** Broken; 'dash-dot': the long-dashed dotted line of ISO 128, for outlines. */
  readonly dash?: boolean | 'dash-dot'
}

export interface CircleMark extends Standing {
  readonly is: 'circle'
  readonly at: XY
  readonly r: Millimetres
  readonly pen: Pen
  readonly ink?: Ink
  readonly fill?: Ink
}

/** Arc of a circle from one angle to another, degrees clockwise from the x axis (y is down). */
export interface ArcMark extends Standing {
  readonly is: 'arc'
  readonly at: XY
  readonly r: Millimetres
  readonly from: number
  readonly to: number
  readonly pen: Pen
  readonly ink?: Ink
}

export interface TextMark extends Standing {
  readonly is: 'text'
  /** Anchor point on the baseline. */
  readonly at: XY
  readonly text: string
  /** Height of a capital letter, mm (ISO 3098: 1.8, 2.5, 3.5, 5). Never under 1.8 on paper. */
  readonly height: Millimetres
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly weight?: 'regular' | 'bold'
  readonly ink?: Ink
  /** 90: reads upwards, from the right-hand side of the sheet. Symbols that are turned keep their text upright. */
  readonly turn?: 0 | 90
}

export type Mark = LineMark | CircleMark | ArcMark | TextMark
