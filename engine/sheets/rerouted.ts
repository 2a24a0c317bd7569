import { designIn } from '../edit/designin'
import { boxOf } from '../kinds/place'
import type { ConductorId, Design, PartId } from '../model/design'
import type { XY } from '../model/marks'
import { obstacleOf } from './placeparts'
import type { Scene, SceneLabel } from './scene'
import type { Shown } from './shown'
import { wiresOf } from './wires'

/**
 * Ways of the conductors at some parts that stand `by` (mm) from where `scene` has them, everything else as it is
 * there: laid round all others where there is room, without laying the sheet out anew; those without a free way are left out. `whole`: the
 * design that the scene shows. Cost: that of the router for those conductors; boxes and kept ways once over.
 */
export function reroutedWays(
  whole: Design,
  scene: Scene,
  moved: ReadonlySet<PartId>,
  [dx, dy]: XY,
): ReadonlyMap<ConductorId, readonly XY[]> {
  const design = designIn(whole, scene.view)
  const parts = design.parts.map((p) => (moved.has(p.id) ? { ...p, x: p.x + dx, y: p.y + dy } : p))
  const there: Design = { ...design, parts }
  const drawn = new Set(scene.parts.map((p) => p.id))
  const boxes = parts
    .filter((p) => drawn.has(p.id))
    .map((p) => ({ id: p.id, ...boxOf(p, design.conductors) }))
  const labels = scene.labels.flatMap((label): SceneLabel[] => {
    if (!('part' in label.of)) return []
    return [moved.has(label.of.part) ? { ...label, x: label.x + dx, y: label.y + dy } : label]
  })
  const words = [...scene.texts, ...scene.outlines.map((o) => o.name)]
  const byId = new Map(design.conductors.map((c) => [c.id, c]))
  const natures = new Map(scene.conductors.map((c) => [c.id, c.nature]))
  const shown = scene.conductors.flatMap(({ id }): Shown[] => {
    const conductor = byId.get(id)
    return conductor ? [{ conductor, withReturn: null }] : []
  })
  const { conductors } = wiresOf(
    there,
    shown,
    (c) => natures.get(c.id) ?? 'other',
    [
      ...boxes,
      ...words.map((t, i) => ({ ...obstacleOf(t, i), id: `words ${i}` })),
      ...labels.map(obstacleOf),
    ],
    [],
    scene.conductors,
    { pushes: false },
  )
  const touched = conductors.filter((c) => c.routed && moved.has(c.from.part) !== moved.has(c.to.part))
  return new Map(touched.map((c) => [c.id, c.points]))
}
