import { type Answers, type Design, type Scene, type SceneView, sceneOf } from '../../engine'
import { serve } from './serve'

export interface SceneWish {
  readonly design: Design
  readonly answers: Answers | null
  readonly view: SceneView
}

/** The scene of before, for each view, with its design: ways that still stand are kept. */
const previous = new Map<SceneView, { readonly scene: Scene; readonly design: Design }>()

serve<SceneWish, Scene>(({ design, answers, view }) => {
  const scene = sceneOf(design, answers, view, kept(design, view))
  previous.set(view, { scene, design })
  return scene
})

/** The scene of before without the ways that were laid by hand then and run freely now. */
function kept(design: Design, view: SceneView): Scene | undefined {
  const before = previous.get(view)
  if (!before) return undefined
  const held = new Set(before.design.conductors.flatMap((c) => (c.path.length > 0 ? [c.id] : [])))
  const freed = new Set(
    design.conductors.flatMap((c) => (c.path.length === 0 && held.has(c.id) ? [c.id] : [])),
  )
  if (freed.size === 0) return before.scene
  return { ...before.scene, conductors: before.scene.conductors.filter((c) => !freed.has(c.id)) }
}
