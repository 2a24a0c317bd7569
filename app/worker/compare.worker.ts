import {
  allChangeRows,
  analysedState,
  type ChangeRow,
  type Design,
  type Scene,
  type SceneView,
  sceneOf,
} from '../../engine'
import { serve } from './serve'

export interface CompareWish {
  readonly before: Design
  readonly after: Design
  readonly view: SceneView
}

/** Both states laid out, the later one as like the earlier one as it can be, and everything that differs. */
export interface Compared {
  readonly before: Scene
  readonly after: Scene
  readonly rows: readonly ChangeRow[]
}

serve<CompareWish, Compared>(({ before, after, view }) => {
  const was = analysedState(before)
  const first = sceneOf(before, was.answers, view)
  if (before === after) return { before: first, after: first, rows: [] }
  const is = analysedState(after)
  return {
    before: first,
    after: sceneOf(after, is.answers, view, first),
    rows: allChangeRows(was, is),
  }
})
