import { type Scene, widthOf } from '../../engine'
import type { Box, Measure } from '../lenses/tags'
import { readableMm, wordsAt } from './density'
import { edgeToPart } from './hugging'

/** Height of the capitals of a tag, mm on the sheet. */
export const tagHeight = (zoom: number): number => Math.max(1.8, readableMm(zoom) * 1.05)

/** Room of a tag on the sheet: its words with a little paper around them. */
export const measureAt =
  (zoom: number): Measure =>
  (text) => {
    const height = tagHeight(zoom)
    return [widthOf(text, height, 'bold') + height * 0.7, height * 1.6]
  }

/** What tags keep clear of: parts and the words shown beside them. */
export function takenBy(scene: Scene | null, zoom: number): readonly Box[] {
  if (!scene) return []
  const parts = new Map(scene.parts.map((p) => [p.id, p]))
  const words = scene.labels.flatMap((label): Box[] => {
    const part = 'part' in label.of ? parts.get(label.of.part) : undefined
    if (!part || label.turn !== 0) return []
    const texts = wordsAt({ ...label, hugs: edgeToPart(label, part), leaderAt: null }, zoom)
    return texts.map((t) => ({
      x: label.x + t.at[0],
      y: label.y + t.at[1] - t.height,
      w: widthOf(t.text, t.height, t.weight),
      h: t.height * 1.1,
    }))
  })
  return [...scene.parts, ...words]
}
