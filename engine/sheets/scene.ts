import type { ConductorId, PartId, TerminalRef, ViewKey } from '../model/design'
import type { Mark, XY } from '../model/marks'
import type { Millimetres } from '../units'

/**
 * The scene: one design laid out in millimetres, in one view, ready to be painted on screen or on a sheet.
 * It is made from the design and the latest answers; nothing in it is stored.
 */
export interface Scene {
  readonly view: SceneView
  readonly parts: readonly ScenePart[]
  readonly conductors: readonly SceneConductor[]
  /** Dots where conductors join away from a terminal. */
  readonly joins: readonly XY[]
  readonly labels: readonly SceneLabel[]
  /** Behind everything else. */
  readonly outlines: readonly SceneOutline[]
  readonly texts: readonly SceneText[]
  readonly box: {
    readonly x: Millimetres
    readonly y: Millimetres
    readonly w: Millimetres
    readonly h: Millimetres
  }
}

export type SceneView = ViewKey

export interface ScenePart {
  readonly id: PartId
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
  /** Already turned and mirrored, relative to x, y; text upright. */
  readonly marks: readonly Mark[]
}

export interface SceneConductor {
  readonly id: ConductorId
  readonly from: TerminalRef
  readonly to: TerminalRef
  readonly points: readonly XY[]
  readonly nature: 'positive' | 'negative' | 'other' | 'data' | 'mains'
  /** Single-line view: the return that this line also stands for. */
  readonly withReturn: ConductorId | null
  /** False: no free way was found; drawn straight and reported. */
  readonly routed: boolean
}

/** A rectangle round parts of one place, with its name; a zone whose parts others stand between has several. */
export interface SceneOutline {
  /** Id of the zone; null: round parts at mains voltage, for licensed persons only. */
  readonly zone: string | null
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
  readonly name: SceneText
}

/** Words that stand for themselves. */
export interface SceneText {
  /** Id of the text on the sheet, or of the zone that it names. */
  readonly id: string
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
  /** Relative to x, y. */
  readonly marks: readonly Mark[]
}

export interface SceneLabel {
  readonly of: { readonly part: PartId } | { readonly conductor: ConductorId }
  readonly x: Millimetres
  readonly y: Millimetres
  readonly w: Millimetres
  readonly h: Millimetres
  readonly turn: 0 | 90
  /** Relative to x, y of the unturned label. */
  readonly marks: readonly Mark[]
  readonly leader: readonly [XY, XY] | null
}
