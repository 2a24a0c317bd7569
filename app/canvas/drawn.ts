import { useMemo } from 'react'
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
import { useLatest } from '../store/latest'
import { useOpen } from '../store/open'
import { useView } from '../store/view'

/** The conductors that the view draws. */
export function useDrawn(): readonly Conductor[] {
  const conductors = useOpen((s) => s.design.conductors)
  const view = useView((s) => s.view)
  const scene = useLatest((s) => s.scene)
  const laidOut = useLatest((s) => s.laidOut)
  const runs = useLatest((s) => s.answers?.runs)
  return useMemo(
    () => conductors.filter((c) => isDrawn(c, view, runs?.get(c.id)?.nature, scene, laidOut)),
    [conductors, view, runs, scene, laidOut],
  )
}

/** Does the view draw this conductor? The layout decides; of what it has not seen yet, the view itself. */
function isDrawn(
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
