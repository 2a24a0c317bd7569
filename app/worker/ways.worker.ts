import { type ConductorId, type Design, type PartId, reroutedWays, type Scene, type XY } from '../../engine'
import { serve } from './serve'

/** What is dragged from: told once, at the beginning. */
export interface WaysBase {
  readonly design: Design
  readonly scene: Scene
}

/** Where parts are now, mm from where the base has them. */
export interface WaysWish {
  readonly parts: ReadonlySet<PartId>
  readonly by: XY
}

export type Ways = ReadonlyMap<ConductorId, readonly XY[]>

let base: WaysBase | null = null

serve<WaysBase | WaysWish, Ways>((told) => {
  if ('scene' in told) base = told
  else if (base) return reroutedWays(base.design, base.scene, told.parts, told.by)
  return new Map()
})
