import type { Conductor, ConductorId, Design, PartId, Scene, SceneConductor, SceneLabel } from '../../engine'

/** Look-ups built once for each list and kept as long as the list lives. */
const laidIndex = new WeakMap<readonly SceneConductor[], ReadonlyMap<ConductorId, SceneConductor>>()
const labelIndex = new WeakMap<readonly SceneLabel[], ReadonlySet<PartId>>()
const returnIndex = new WeakMap<readonly Conductor[], ReadonlyMap<ConductorId, Conductor>>()

/** The laid-out way of a conductor in the newest scene. */
export function laidOf(scene: Scene | null, id: ConductorId): SceneConductor | undefined {
  if (!scene) return undefined
  let index = laidIndex.get(scene.conductors)
  if (!index) {
    index = new Map(scene.conductors.map((c) => [c.id, c]))
    laidIndex.set(scene.conductors, index)
  }
  return index.get(id)
}

/** The return that was drawn with a feed. */
export function returnOf(design: Design, feed: ConductorId): Conductor | undefined {
  let index = returnIndex.get(design.conductors)
  if (!index) {
    index = new Map(design.conductors.flatMap((c) => (c.returnOf ? [[c.returnOf, c] as const] : [])))
    returnIndex.set(design.conductors, index)
  }
  return index.get(feed)
}

/** Has the newest layout a label for this part? A part placed since has none yet. */
export function isLabelled(scene: Scene | null, id: PartId): boolean {
  if (!scene) return false
  let index = labelIndex.get(scene.labels)
  if (!index) {
    index = new Set(scene.labels.flatMap((l) => ('part' in l.of ? [l.of.part] : [])))
    labelIndex.set(scene.labels, index)
  }
  return index.has(id)
}
