import type { Scene, SceneConductor, SceneLabel, ScenePart, ScheduleRow } from '../../../engine'

export interface Crop {
  readonly viewBox: string
  readonly parts: readonly ScenePart[]
  readonly conductors: readonly SceneConductor[]
  readonly labels: readonly SceneLabel[]
  /** What the row speaks of: conductors, and boxes of parts. */
  readonly marked: readonly SceneConductor[]
  readonly boxes: readonly Box[]
}

interface Box {
  readonly x: number
  readonly y: number
  readonly w: number
  readonly h: number
}

const MARGIN = 8
/** A crop is never smaller than this, mm: round a single part one wants to see where it hangs. */
const LEAST = { w: 70, h: 50 }

/** What of a scene lies round the things that a row speaks of; null: none of them is drawn in this view. O(scene). */
export function cropOf(
  scene: Scene,
  { parts, conductors }: Pick<ScheduleRow, 'parts' | 'conductors'>,
): Crop | null {
  const [partIds, runIds] = [new Set(parts), new Set(conductors)]
  const marked = scene.conductors.filter(
    (c) => runIds.has(c.id) || (c.withReturn !== null && runIds.has(c.withReturn)),
  )
  const boxes = scene.parts.filter((p) => partIds.has(p.id))
  if (marked.length + boxes.length === 0) return null
  const around = widened(enclosing([...marked.map((c) => enclosing(c.points.map(pointBox))), ...boxes]))
  const meets = (b: Box) => overlap(b, around)
  return {
    viewBox: `${around.x} ${around.y} ${around.w} ${around.h}`,
    parts: scene.parts.filter(meets),
    conductors: scene.conductors.filter((c) => meets(enclosing(c.points.map(pointBox)))),
    labels: scene.labels.filter(meets),
    marked,
    boxes,
  }
}

const pointBox = ([x, y]: readonly [number, number]): Box => ({ x, y, w: 0, h: 0 })

function enclosing(boxes: readonly Box[]): Box {
  const [x, y] = [Math.min(...boxes.map((b) => b.x)), Math.min(...boxes.map((b) => b.y))]
  return {
    ...{ x, y },
    w: Math.max(...boxes.map((b) => b.x + b.w)) - x,
    h: Math.max(...boxes.map((b) => b.y + b.h)) - y,
  }
}

function widened({ x, y, w, h }: Box): Box {
  const [wide, high] = [Math.max(w + 2 * MARGIN, LEAST.w), Math.max(h + 2 * MARGIN, LEAST.h)]
  return { x: x + w / 2 - wide / 2, y: y + h / 2 - high / 2, w: wide, h: high }
}

const overlap = (a: Box, b: Box): boolean =>
  a.x <= b.x + b.w && b.x <= a.x + a.w && a.y <= b.y + b.h && b.y <= a.y + a.h
