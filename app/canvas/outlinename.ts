import { type Mark, type SceneOutline, type SceneText, widthOf } from '../../engine'
import { isReadable, readableMm } from './density'

/** Lettered no larger than this, mm, however far out one looks. */
const LARGEST = 8

/**
 * The name of an outline as it can be read at a zoom: lettered larger from its own corner where it would be too small.
 * The newest name counts, also before the layout has seen it. Round mains (`newest` null) sign and words stay as laid out.
 */
export function nameAt({ name, w }: SceneOutline, newest: string | null, zoom: number): SceneText {
  const first = name.marks.find((m) => m.is === 'text')
  if (newest === null || !first) return name
  const height = isReadable(first.height, zoom) ? first.height : Math.min(LARGEST, readableMm(zoom))
  const width = widthOf(newest, height)
  if (width > Math.max(w, name.w) && height > first.height) return relettered(name, newest, first.height)
  return relettered(name, newest, height)
}

function relettered(name: SceneText, text: string, height: number): SceneText {
  const mark: Mark = { is: 'text', at: [0, height * 1.15], text, height }
  return { ...name, w: widthOf(text, height), h: height * 1.5, marks: [mark] }
}
