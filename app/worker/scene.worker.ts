import { type Answers, type Design, type Scene, type SceneView, sceneOf } from '../../engine'
import { serve } from './serve'

export interface SceneWish {
  readonly design: Design
  readonly answers: Answers | null
  readonly view: SceneView
}

/** The scene of before, for each view: ways that still stand are kept. */
const previous = new Map<SceneView, Scene>()

serve<SceneWish, Scene>(({ design, answers, view }) => {
  const scene = sceneOf(design, answers, view, previous.get(view))
  previous.set(view, scene)
  return scene
})
