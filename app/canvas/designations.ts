import { type Scene, type SceneLabel, type TextMark, widthOf } from '../../engine'
import { type Box, meet } from '../lenses/tags'
import { OWN_ROOM, readableMm, wordsAt } from './density'
import { edgeToPart } from './hugging'

type Words = ReadonlyMap<SceneLabel, readonly TextMark[]>

/** What a designation may take at most at an overview, mm. */
const FAR_ROOM = { w: 22, h: 12 }

const known = new WeakMap<Scene, { readonly zoom: number; readonly words: Words }>()

/**
 * The words beside parts at a zoom. Far out a designation may grow beyond its label, over lines, where it meets no part
 * and no other designation; in the order of the labels. O(labels × (labels + parts)) at a new zoom.
 */
export function wordsBesideParts(scene: Scene, zoom: number): Words {
  const before = known.get(scene)
  if (before?.zoom === zoom) return before.words
  const words = worked(scene, zoom)
  known.set(scene, { zoom, words })
  return words
}

function worked(scene: Scene, zoom: number): Words {
  const parts = new Map(scene.parts.map((p) => [p.id, p]))
  const words = new Map<SceneLabel, readonly TextMark[]>()
  const setIn = (label: SceneLabel, room: typeof OWN_ROOM): readonly TextMark[] => {
    const part = 'part' in label.of ? parts.get(label.of.part) : undefined
    return part ? wordsAt({ ...label, hugs: edgeToPart(label, part), leaderAt: null }, zoom, room) : []
  }
  for (const label of scene.labels) if ('part' in label.of) words.set(label, setIn(label, OWN_ROOM))
  for (const [label, own] of words) {
    if (own.length > 0 && own[0]!.height >= readableMm(zoom) * 0.97) continue
    const grown = setIn(label, FAR_ROOM)
    const others = [...words].flatMap(([other, texts]) => (other === label ? [] : boxesOf(other, texts)))
    const free = boxesOf(label, grown).every((b) => ![...scene.parts, ...others].some((o) => meet(b, o)))
    if (free) words.set(label, grown)
  }
  return words
}

/** Where texts of an upright label stand on the sheet. */
export const boxesOf = (label: Pick<SceneLabel, 'x' | 'y'>, texts: readonly TextMark[]): Box[] =>
  texts.map((t) => ({
    x: label.x + t.at[0],
    y: label.y + t.at[1] - t.height,
    w: widthOf(t.text, t.height, t.weight),
    h: t.height,
  }))
