import type { Millimetres } from '../units'
import { extentOf } from './extent'
import type { LabelObstacles, Rect, Stretch } from './labels/request'
import type { Layout } from './layout'
import type { Area } from './paper'
import { tickAt } from './runmarks'
import type { SceneConductor, SceneLabel } from './scene'

/** Stretches of a conductor, longest first; level ones count for more, as words are read level. */
export function stretchesOf({ points }: SceneConductor): Stretch[] {
  const stretches = points.slice(1).map(([x2, y2], i): Stretch => {
    const [x1, y1] = points[i]!
    return { x1, y1, x2, y2 }
  })
  const worth = (s: Stretch): number => 2 * Math.abs(s.x2 - s.x1) + Math.abs(s.y2 - s.y1)
  return stretches.sort((a, b) => worth(b) - worth(a))
}

export const longest = (drawn: SceneConductor): number =>
  Math.max(0, ...stretchesOf(drawn).map((s) => Math.abs(s.x2 - s.x1) + Math.abs(s.y2 - s.y1)))

/** Half the room that a tick takes. */
const TICK = 1.6

export function obstaclesIn(layout: Layout, within: Area | undefined, clear: Millimetres): LabelObstacles {
  const ticks = layout.conductors
    .filter((c) => c.withReturn !== null)
    .map((c): Rect => {
      const [x, y] = tickAt(c).at
      return { x: x - TICK, y: y - TICK, w: 2 * TICK, h: 2 * TICK }
    })
  return {
    boxes: [
      ...layout.parts,
      ...layout.partLabels.map((l) => raised(extentOf(l), clear)),
      ...layout.partLabels.flatMap(leaderPieces),
      ...layout.flags.map((f) => f.box),
      ...layout.outlines.map((o) => o.name),
      ...layout.texts,
      ...ticks,
      ...(within ? fenceOf(within) : []),
    ],
    segments: [...layout.conductors.flatMap(stretchesOf), ...layout.outlines.flatMap(edgesOf)],
  }
}

const edgesOf = ({ x, y, w, h }: Area): Stretch[] => [
  { x1: x, y1: y, x2: x + w, y2: y },
  { x1: x, y1: y + h, x2: x + w, y2: y + h },
  { x1: x, y1: y, x2: x, y2: y + h },
  { x1: x + w, y1: y, x2: x + w, y2: y + h },
]

const raised = ({ x, y, w, h }: Area, by: Millimetres): Rect => ({ x, y: y - by, w, h: h + 2 * by })

/** Strips around an area, wider than any label reaches. */
const FENCE = 100

const fenceOf = ({ x, y, w, h }: Area): Rect[] => [
  { x: x - FENCE, y: y - FENCE, w: w + 2 * FENCE, h: FENCE },
  { x: x - FENCE, y: y + h, w: w + 2 * FENCE, h: FENCE },
  { x: x - FENCE, y, w: FENCE, h },
  { x: x + w, y, w: FENCE, h },
]

/** The same obstacles with labels that are placed by now, and their leaders, for those still to be placed. */
export const withBoxes = (around: LabelObstacles, labels: readonly SceneLabel[]): LabelObstacles => ({
  ...around,
  boxes: [...around.boxes, ...labels.map(extentOf), ...labels.flatMap(leaderPieces)],
})

/** Length of the pieces that a slanting leader is looked at in, mm. */
const PIECE = 1

export function leaderPieces({ leader }: SceneLabel): Rect[] {
  if (!leader) return []
  const [[x1, y1], [x2, y2]] = leader
  const count = Math.ceil(Math.hypot(x2 - x1, y2 - y1) / PIECE)
  const [dx, dy] = [(x2 - x1) / count, (y2 - y1) / count]
  return Array.from({ length: Math.max(0, count - 1) }, (_, i): Rect => {
    const [x, y] = [x1 + i * dx, y1 + i * dy]
    return { x: Math.min(x, x + dx), y: Math.min(y, y + dy), w: Math.abs(dx), h: Math.abs(dy) }
  })
}
