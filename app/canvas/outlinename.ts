import { type Mark, type SceneOutline, type SceneText, widthOf } from '../../engine'
import { isReadable, readableMm } from './density'

/** Lettered no larger than this, mm, however far out one looks. */
const LARGEST = 8

/**
 * The name of an outline as it can be read at a zoom: lettered larger from its own corner where it would be too small.
 * The newest name counts, also before the layout has seen it. Round mains (`newest` null) sign and words stay as laid out.
 */
export function nameAt(outline: SceneOutline, newest: string | null, zoom: number): SceneText {
  const { name, w } = outline
  const first = name.marks.find((m) => m.is === 'text')
  if (newest === null || !first) return name
  const height = isReadable(first.height, zoom) ? first.height : Math.min(LARGEST, readableMm(zoom))
  const most = Math.max(name.w, w - 2) / widthOf(newest, 1)
  return relettered(name, outline, newest, Math.max(first.height, Math.min(height, most)))
}

/** From the side that it stands against, so that it grows into the outline. */
function relettered(name: SceneText, { x, w }: SceneOutline, text: string, height: number): SceneText {
  const mark: Mark = { is: 'text', at: [0, height * 1.15], text, height }
  const width = widthOf(text, height)
  const atRight = name.x - x > x + w - (name.x + name.w)
  const left = atRight ? name.x + name.w - width : name.x
  return { ...name, x: left, w: width, h: height * 1.5, marks: [mark] }
}
