import type { Answers } from '../calc/answers'
import { boxOf, symbolOf } from '../kinds/place'
import type { Design, Part, SheetText } from '../model/design'
import type { Flag } from './flags'
import { mainsWalls } from './mainswalls'
import { natureIn } from './nature'
import { outlinesOf } from './outlines'
import { obstacleOf, placePartLabels } from './placeparts'
import type { Scene, SceneConductor, SceneLabel, ScenePart, SceneView } from './scene'
import { setAgain, wallingIn } from './setagain'
import { sceneText, textsIn } from './sheettexts'
import { partsIn, type Shown, shownIn } from './shown'
import { wiresOf } from './wires'

/** What a layout is made of: parts and conductors of one view, or those of them that one sheet holds. */
export interface Content {
  readonly view: SceneView
  readonly parts: readonly Part[]
  readonly shown: readonly Shown[]
  readonly texts: readonly SheetText[]
}

/** A scene before its conductors are labelled. */
export interface Layout
  extends Pick<Scene, 'view' | 'parts' | 'conductors' | 'joins' | 'outlines' | 'texts'> {
  readonly shown: readonly Shown[]
  readonly partLabels: readonly SceneLabel[]
  /** References at the edges, where conductors lead to other sheets. */
  readonly flags: readonly Flag[]
}

/** Everything that a view of a design shows. */
export function contentOf(design: Design, answers: Answers | null, view: SceneView): Content {
  const shown = shownIn(design, view, natureIn(design, answers))
  return { view, shown, parts: partsIn(design, view, shown), texts: textsIn(design, view) }
}

/**
 * Lays content out: words beside the parts, then conductors around both. Words that wall a terminal in give way to
 * its conductors and are set again afterwards. Ways of `previous` are kept where they can be.
 */
export function layoutOf(
  design: Design,
  answers: Answers | null,
  content: Content,
  flags: readonly Flag[] = [],
  previous: readonly SceneConductor[] = [],
): Layout {
  const { view, shown, parts } = content
  const natureOf = natureIn(design, answers)
  const boxes = parts.map((p) => ({ id: p.id, ...boxOf(p, design.conductors) }))
  const texts = content.texts.map(sceneText)
  const blocks = [...boxes, ...flags.map((f) => ({ id: `flag ${f.conductor} ${f.end}`, ...f.box }))]
  let partLabels = placePartLabels(design, parts, answers, texts)
  const outlines = outlinesOf(design, parts, partLabels, texts)
  const words = [...texts, ...outlines.map((o) => o.name)]
  const walls = mainsWalls(design, parts, outlines).map((area, i) => ({ id: `mains ${i}`, ...area }))
  const solid = [...blocks, ...walls, ...words.map((t, i) => ({ ...obstacleOf(t, i), id: `words ${i}` }))]
  const around = (labels: readonly SceneLabel[], before: readonly SceneConductor[]) =>
    wiresOf(design, shown, natureOf, [...solid, ...labels.map(obstacleOf)], flags, before)

  let wires = around(partLabels, previous)
  const loose = wallingIn(partLabels, wires.conductors)
  if (loose.size > 0) {
    wires = around(
      partLabels.filter((l) => !loose.has(l)),
      wires.conductors,
    )
    partLabels = setAgain(partLabels, loose, boxes, solid, wires.conductors)
  }
  const drawn = parts.map((p) => scenePart(design, p))
  return { view, shown, parts: drawn, partLabels, flags, outlines, texts, ...wires }
}

function scenePart(design: Design, part: Part): ScenePart {
  const { x, y } = boxOf(part, design.conductors)
  return { id: part.id, x, y, ...symbolOf(part, design.conductors) }
}
