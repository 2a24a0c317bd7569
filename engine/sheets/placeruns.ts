import type { Answers } from '../calc/answers'
import type { Design } from '../model/design'
import { type Block, blockOf } from './block'
import { extentOf } from './extent'
import { placeLabels } from './labels/place'
import type { LabelObstacles, PlacedLabel, Rect, Stretch } from './labels/request'
import type { Layout } from './layout'
import type { Area } from './paper'
import { onOneLine, runLines } from './runlabels'
import { tickAt } from './runmarks'
import type { SceneConductor, SceneLabel } from './scene'
import type { Shown } from './shown'

export interface RunLabels {
  readonly labels: readonly SceneLabel[]
  /** Conductors that had room for their number at most. */
  readonly short: readonly Shown[]
}

/** A leader that is longer than this is harder to follow than a number is to look up, mm. */
const LONGEST_LEADER = 40

/**
 * Words on every conductor of a layout: along its longest level stretch where there is room, else nearby with a
 * leader; where neither is to be had, its number alone. On a sheet they keep to the area `within`.
 */
export function placeRunLabels(
  design: Design,
  answers: Answers | null,
  layout: Layout,
  within?: Area,
): RunLabels {
  const around = obstaclesIn(layout, within)
  const runs = layout.shown.map((shown, i): Run => {
    const drawn = layout.conductors[i]!
    return { shown, drawn, block: blockFor(design, answers, shown, drawn) }
  })
  const full = placed(runs, around)
  const boxes = [...around.boxes, ...full.labels.map(extentOf)]
  const numbers = placed(full.rest.map(numbered), { ...around, boxes })
  return { labels: [...full.labels, ...numbers.labels], short: full.rest.map((r) => r.shown) }
}

interface Run {
  readonly shown: Shown
  readonly drawn: SceneConductor
  readonly block: Block
}

function placed(runs: readonly Run[], around: LabelObstacles): { labels: SceneLabel[]; rest: Run[] } {
  const places = placeLabels(
    runs.map(({ drawn, block: { w, h } }) => ({
      ...{ id: drawn.id, w, h, near: stretchesOf(drawn) },
      // Words that have room along their own conductor come before those that will take a leader.
      priority: w <= longest(drawn) ? 1 : 0,
    })),
    around,
  )
  const isGood = ({ placed: is, leader }: PlacedLabel): boolean =>
    is && (!leader || Math.hypot(leader[0].x - leader[1].x, leader[0].y - leader[1].y) <= LONGEST_LEADER)
  return {
    labels: places.flatMap((p, i) => (isGood(p) ? [sceneLabel(p, runs[i]!.block)] : [])),
    rest: runs.filter((_, i) => !isGood(places[i]!)),
  }
}

function numbered({ shown, drawn }: Run): Run {
  const numbers = [shown.conductor, shown.withReturn].flatMap((c) => (c ? [c.number] : []))
  return { shown, drawn, block: blockOf([[{ text: numbers.join('/'), weight: 'bold' }]]) }
}

/** On one line where a level stretch is long enough for it, otherwise on short lines one below the other. */
function blockFor(design: Design, answers: Answers | null, shown: Shown, drawn: SceneConductor): Block {
  const lines = runLines(design, shown, answers)
  const level = Math.max(0, ...stretchesOf(drawn).map((s) => Math.abs(s.x2 - s.x1)))
  const single = blockOf([onOneLine(lines)])
  return single.w <= level ? single : blockOf(lines)
}

/** Stretches of a conductor, longest first; level ones count for more, as words are read level. */
function stretchesOf({ points }: SceneConductor): Stretch[] {
  const stretches = points.slice(1).map(([x2, y2], i): Stretch => {
    const [x1, y1] = points[i]!
    return { x1, y1, x2, y2 }
  })
  const worth = (s: Stretch): number => 2 * Math.abs(s.x2 - s.x1) + Math.abs(s.y2 - s.y1)
  return stretches.sort((a, b) => worth(b) - worth(a))
}

const longest = (drawn: SceneConductor): number =>
  Math.max(0, ...stretchesOf(drawn).map((s) => Math.abs(s.x2 - s.x1) + Math.abs(s.y2 - s.y1)))

/** Half the room that a tick takes. */
const TICK = 1.6

function obstaclesIn(layout: Layout, within: Area | undefined): LabelObstacles {
  const ticks = layout.conductors
    .filter((c) => c.withReturn !== null)
    .map((c): Rect => {
      const [x, y] = tickAt(c).at
      return { x: x - TICK, y: y - TICK, w: 2 * TICK, h: 2 * TICK }
    })
  return {
    boxes: [
      ...layout.parts,
      ...layout.partLabels.map(extentOf),
      ...layout.flags.map((f) => f.box),
      ...ticks,
      ...(within ? fenceOf(within) : []),
    ],
    segments: layout.conductors.flatMap(stretchesOf),
  }
}

/** Strips around an area, wider than any label reaches. */
const FENCE = 100

const fenceOf = ({ x, y, w, h }: Area): Rect[] => [
  { x: x - FENCE, y: y - FENCE, w: w + 2 * FENCE, h: FENCE },
  { x: x - FENCE, y: y + h, w: w + 2 * FENCE, h: FENCE },
  { x: x - FENCE, y, w: FENCE, h },
  { x: x + w, y, w: FENCE, h },
]

function sceneLabel({ id, x, y, w, h, turn, leader }: PlacedLabel, { marks }: Block): SceneLabel {
  const size = turn === 0 ? { x, y, w, h } : { x, y: y + h, w: h, h: w }
  return {
    of: { conductor: id },
    ...size,
    turn,
    marks,
    leader: leader
      ? [
          [leader[0].x, leader[0].y],
          [leader[1].x, leader[1].y],
        ]
      : null,
  }
}
