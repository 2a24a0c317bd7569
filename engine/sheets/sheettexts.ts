import { boxOf } from '../kinds/place'
import type { Design, Part, SheetText } from '../model/design'
import { blockOf, USUAL } from './block'
import type { Area } from './paper'
import type { SceneText, SceneView } from './scene'

/** Texts that a view shows. */
export const textsIn = ({ texts = [] }: Pick<Design, 'texts'>, view: SceneView): readonly SheetText[] =>
  texts.filter((t) => t.view === 'all' || t.view === view)

/** A text as it stands on the sheet. */
export function sceneText({ id, text, x, y }: SheetText): SceneText {
  const { w, h, marks } = blockOf(text.split('\n').map((line) => [{ text: line, height: USUAL }]))
  return { id, x, y, w, h, marks }
}

/** Of the texts of a view, those that belong with some of its parts: each goes with the part that it is nearest to. */
export function textsWith(
  { conductors }: Design,
  texts: readonly SheetText[],
  all: readonly Part[],
  here: (part: string) => boolean,
): readonly SheetText[] {
  if (texts.length === 0) return texts
  const boxes = all.map((p) => ({ id: p.id, ...boxOf(p, conductors) }))
  return texts.filter((text) => {
    const own = sceneText(text)
    let [nearest, least] = ['', Infinity]
    for (const box of boxes) {
      const far = distance(own, box)
      if (far < least) [nearest, least] = [box.id, far]
    }
    return here(nearest)
  })
}

function distance(a: Area, b: Area): number {
  const dx = Math.max(0, a.x - b.x - b.w, b.x - a.x - a.w)
  const dy = Math.max(0, a.y - b.y - b.h, b.y - a.y - a.h)
  return Math.hypot(dx, dy)
}
