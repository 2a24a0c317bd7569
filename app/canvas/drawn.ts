import {
  type Conductor,
  conductorById,
  type Design,
  type Part,
  type Scene,
  type SceneView,
  terminalsOf,
} from '../../engine'
import { laidOf } from '../store/laid'

/** Does the view draw this conductor? The layout decides; of what it has not seen yet, the view itself. */
export function isDrawn(
  c: Conductor,
  view: SceneView,
  nature: string | undefined,
  scene: Scene | null,
  laidOut: Design | null,
): boolean {
  if (scene?.view === view && laidOut && conductorById(laidOut, c.id))
    return laidOf(scene, c.id) !== undefined
  if (view === 'single-line') return c.returnOf === null
  if (view === 'data') return nature === 'data'
  return true
}

/** The data view leaves out parts that no data link can reach. */
export const isShown = (part: Part, view: SceneView, conductors: readonly Conductor[]): boolean =>
  view !== 'data' || terminalsOf(part, conductors).some((t) => t.pole === 'data')
