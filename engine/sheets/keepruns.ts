import type { ConductorId } from '../model/design'
import { type Block, blockOf, type Piece } from './block'
import { extentOf } from './extent'
import { emptySheet, isFree, occupy } from './labels/occupied'
import type { LabelObstacles, Rect, Stretch } from './labels/request'
import { leaderPieces } from './runobstacles'
import type { Scene, SceneConductor, SceneLabel } from './scene'

/** A conductor as it is drawn now, with the words that it is to carry. */
export interface Worded {
  readonly drawn: SceneConductor
  readonly lines: readonly (readonly Piece[])[]
  readonly block: Block
  /** Its number alone. */
  readonly numbers: Block
}

/**
 * Labels of an earlier scene that may stay: of conductors whose way and words are as they were, where nothing has
 * come in their way. They need not be placed again, and an edit elsewhere does not move them. In their former order.
 */
export function keptLabels(
  runs: readonly Worded[],
  { boxes, segments }: LabelObstacles,
  previous: Pick<Scene, 'conductors' | 'labels'>,
): SceneLabel[] {
  const taken = emptySheet()
  for (const box of boxes) occupy(taken, box)
  for (const s of segments) occupy(taken, areaOf(s))
  const before = new Map(previous.conductors.map((c) => [c.id, c]))
  const now = new Map(runs.map((r) => [r.drawn.id, r]))
  const labelsOf = new Map<ConductorId, SceneLabel[]>()
  for (const label of previous.labels)
    if ('conductor' in label.of) {
      const list = labelsOf.get(label.of.conductor)
      if (list) list.push(label)
      else labelsOf.set(label.of.conductor, [label])
    }
  const stays = new Set<SceneLabel>()
  for (const [id, labels] of labelsOf) {
    const run = now.get(id)
    const old = before.get(id)
    if (!run || !old || !isSameWay(old, run.drawn) || !saysTheSame(labels, run)) continue
    if (labels.every((l) => isFree(taken, extentOf(l)) && isClear(l, boxes)))
      for (const l of labels) stays.add(l)
  }
  return previous.labels.filter((l) => stays.has(l))
}

const isSameWay = (a: SceneConductor, b: SceneConductor): boolean =>
  a.points.length === b.points.length &&
  a.points.every(([x, y], i) => x === b.points[i]![0] && y === b.points[i]![1])

/** Are they the words that are wanted now? A number alone stays too, until its conductor is touched. */
function saysTheSame(labels: readonly SceneLabel[], { block, lines, numbers }: Worded): boolean {
  const wanted = new Set([block, blockOf(lines), numbers].map((b) => textOf(b.marks)))
  return labels.every((l) => wanted.has(textOf(l.marks)))
}

const textOf = (marks: SceneLabel['marks']): string =>
  marks.map((m) => (m.is === 'text' ? `${m.at.join(' ')} ${m.text}` : '')).join('|')

/** Does a leader still run clear of boxes? */
function isClear(label: SceneLabel, boxes: readonly Rect[]): boolean {
  const pieces = leaderPieces(label)
  return (
    pieces.length === 0 ||
    !boxes.some((b) =>
      pieces.some((p) => p.x < b.x + b.w && b.x < p.x + p.w && p.y < b.y + b.h && b.y < p.y + p.h),
    )
  )
}

/** A line with what it is drawn with, either side of its middle. */
const LINE = 0.3

const areaOf = (s: Stretch): Rect => ({
  x: Math.min(s.x1, s.x2) - LINE,
  y: Math.min(s.y1, s.y2) - LINE,
  w: Math.abs(s.x2 - s.x1) + 2 * LINE,
  h: Math.abs(s.y2 - s.y1) + 2 * LINE,
})
