import { type Scene, widthOf } from '../../engine'
import type { Box, Measure } from '../lenses/tags'
import { readableMm } from './density'
import { boxesOf, wordsBesideParts } from './designations'

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
  const words = [...wordsBesideParts(scene, zoom)].flatMap(([label, texts]) => boxesOf(label, texts))
  return [...scene.parts, ...words]
}
