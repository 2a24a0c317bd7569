import type { Side } from '../../model/kind'
import type { Millimetres } from '../../units'

/** What the router is asked and what it answers: plain geometry in millimetres, x to the right, y down. */

export interface Point {
  readonly x: Millimetres
  readonly y: Millimetres
}

/** An obstacle; nothing is drawn through it or nearer than one lattice pitch. */
export interface RouteBox {
  readonly id: string
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
}

/** A terminal on the edge of a box, and the side that its conductors leave from. */
export interface RoutePort extends Point {
  readonly side: Side
}

export interface RouteRequest {
  readonly id: string
  readonly from: RoutePort
  readonly to: RoutePort
  /** Conductors of one group (a node, a bundle) are laid one after the other, so that they run side by side. */
  readonly group?: string
  /** Heavier conductors are laid first and so run straighter. Default 1. */
  readonly weight?: number
  /** Corners that were placed by hand, from `from` to `to`; the way goes through them in this order. */
  readonly fixed?: readonly Point[]
}

export interface Routed {
  readonly id: string
  /** Corners with both ends; neighbouring points differ in x or in y, never in both. */
  readonly points: readonly Point[]
  /** False: no free way was found; drawn plainly from end to end, over whatever is there, and to be reported. */
  readonly ok: boolean
}

/** A place where one conductor runs straight across another. */
export interface Crossing extends Point {
  /** Ids of the conductor that runs level and of the one that runs upright. */
  readonly level: string
  readonly upright: string
}

export interface RouteStats {
  readonly kept: number
  readonly laid: number
  readonly failed: number
  readonly crossings: number
  readonly bends: number
  readonly length: Millimetres
}

export interface RouteResult {
  /** In the order of the requests. */
  readonly routes: readonly Routed[]
  readonly crossings: readonly Crossing[]
  /** Dots: where conductors of one terminal part after their common stub. */
  readonly joins: readonly Point[]
  readonly stats: RouteStats
}
