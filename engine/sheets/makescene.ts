import type { Answers } from '../calc/answers'
import { designIn } from '../edit/designin'
import type { Design } from '../model/design'
import { contentOf, layoutOf } from './layout'
import { extentOfLayout } from './layoutextent'
import { placeRunLabels } from './placeruns'
import type { Scene, SceneView } from './scene'

/**
 * One design laid out in one view: symbols, ways of the conductors, words. Ways of `previous`, a scene of the same
 * view, are kept where nothing has come in their way, so that a small edit moves little and costs little.
 * Cost: that of the router.
 */
export function sceneOf(whole: Design, answers: Answers | null, view: SceneView, previous?: Scene): Scene {
  const design = designIn(whole, view)
  const before = previous?.view === view ? previous : undefined
  const layout = layoutOf(design, answers, contentOf(design, answers, view), [], before?.conductors)
  const labels = [...layout.partLabels, ...placeRunLabels(design, answers, layout, undefined, before).labels]
  const { parts, conductors, joins, outlines, texts } = layout
  return { view, parts, conductors, joins, labels, outlines, texts, box: extentOfLayout(layout, labels) }
}
