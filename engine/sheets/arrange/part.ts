import type { Side } from '../../model/kind'
import type { Millimetres } from '../../units'

/** What the arrangement knows about a part: its box, its terminals, and what it is there for. */

export type ArrangeColumn = 'store' | 'source' | 'protection' | 'distribution' | 'switching' | 'load' | 'data'

export interface ArrangePort {
  readonly id: string
  /** Relative to the top left corner of the part. */
  readonly x: Millimetres
  readonly y: Millimetres
  readonly side: Side
}

export interface ArrangePart {
  readonly id: string
  readonly w: Millimetres
  readonly h: Millimetres
  readonly column: ArrangeColumn
  readonly ports: readonly ArrangePort[]
  /** Room that its words take. Absent: the usual. */
  readonly words?: { readonly w: Millimetres; readonly h: Millimetres }
  /** Rank among parts that stand in the same place of the order otherwise, smallest first. */
  readonly order?: number
}

export interface ArrangeEnd {
  readonly part: string
  readonly port: string
}

/** A conductor, given in the direction of the current: feeds towards the load, returns away from it. */
export interface ArrangeLink {
  readonly from: ArrangeEnd
  readonly to: ArrangeEnd
  /** Heavier links are straightened first. Default 1. */
  readonly weight?: number
}

export interface ArrangeOptions {
  /** Width divided by height that the drawing should come near to. Default: A3 landscape. */
  readonly aspect?: number
}

export interface Place {
  readonly x: Millimetres
  readonly y: Millimetres
}
