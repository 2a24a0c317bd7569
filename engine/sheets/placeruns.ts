import type { Answers } from '../calc/answers'
import type { Design } from '../model/design'
import type { Millimetres } from '../units'
import { type Block, blockOf } from './block'
import { keptLabels, type Worded } from './keepruns'
import { placeLabels } from './labels/place'
import type { LabelObstacles, PlacedLabel, Stretch } from './labels/request'
import type { Layout } from './layout'
import type { Area } from './paper'
import { onOneLine, runLines } from './runlabels'
import { longest, obstaclesIn, stretchesOf, withBoxes } from './runobstacles'
import type { Scene, SceneConductor, SceneLabel } from './scene'
import type { Shown } from './shown'

export interface RunLabels {
  readonly labels: readonly SceneLabel[]
  /** Conductors that had room for their number at most. */
  readonly short: readonly Shown[]
}

/** Above and below the words of a part, so that those of a passing conductor are not read as its own, mm. */
const CLEAR = 1.2
/** A leader that is longer than this is harder to follow than words at the part that the conductor leads to, mm. */
const SHORT_LEADER = 20
/** Longest leader at all. */
const LONG_LEADER = 75

/**
 * Words on every conductor of a layout: along its longest level stretch where there is room, or near it with a short
 * leader; else its number alone, with the words at a part that it leads to; else farther off with a long leader; else
 * its number alone. On a sheet they keep to the area `within`; words of `previous` stay where they can.
 */
export function placeRunLabels(
  design: Design,
  answers: Answers | null,
  layout: Layout,
  within?: Area,
  previous?: Pick<Scene, 'conductors' | 'labels'>,
): RunLabels {
  const all = layout.shown.map((shown, i): Run => {
    const drawn = layout.conductors[i]!
    const lines = runLines(design, shown, answers)
    return { shown, drawn, lines, block: blockFor(lines, drawn), numbers: numbersOf(shown) }
  })
  const exact = obstaclesIn(layout, within, 0)
  const stay = previous ? keptLabels(all, exact, previous) : []
  const staying = new Set(stay.map((l) => ('conductor' in l.of ? l.of.conductor : '')))
  const runs = all.filter((r) => !staying.has(r.drawn.id))
  const around = withBoxes(obstaclesIn(layout, within, CLEAR), stay)
  const near = placed(runs, around, SHORT_LEADER)
  const numbers = placed(near.rest.map(numbered), withBoxes(around, near.labels), SHORT_LEADER)
  const close = withBoxes(exact, stay)
  const atPart = atParts(near.rest, layout, withBoxes(close, [...near.labels, ...numbers.labels]))
  const loose = new Set(atPart.rest.map((r) => r.drawn.id))
  const kept = numbers.labels.filter((l) => 'conductor' in l.of && !loose.has(l.of.conductor))
  const settled = [...stay, ...near.labels, ...kept, ...atPart.labels]
  const far = placed(atPart.rest, withBoxes(around, settled), LONG_LEADER)
  const last = placed(far.rest.map(numbered), withBoxes(around, [...settled, ...far.labels]), LONG_LEADER)
  return { labels: [...settled, ...far.labels, ...last.labels], short: far.rest.map((r) => r.shown) }
}

interface Run extends Worded {
  readonly shown: Shown
}

interface Placement {
  readonly labels: readonly SceneLabel[]
  readonly rest: readonly Run[]
}

function placed(runs: readonly Run[], around: LabelObstacles, longestLeader: Millimetres): Placement {
  const places = placeLabels(
    runs.map(({ drawn, block: { w, h } }) => ({
      ...{ id: drawn.id, w, h, near: stretchesOf(drawn) },
      // Words that have room along their own conductor come before those that will take a leader.
      priority: w <= longest(drawn) ? 1 : 0,
      reach: longestLeader,
    })),
    around,
  )
  const isGood = ({ placed: is, leader }: PlacedLabel): boolean =>
    is && (!leader || Math.hypot(leader[0].x - leader[1].x, leader[0].y - leader[1].y) <= longestLeader)
  return {
    labels: places.flatMap((p, i) => (isGood(p) ? [sceneLabel(p, runs[i]!.block)] : [])),
    rest: runs.filter((_, i) => !isGood(places[i]!)),
  }
}

/** A part with more conductors than this would not tell whose words stand with it. */
const FEW = 2

/** Words of conductors below or above those of a part that they lead to and few others: a load, a fuse. */
function atParts(runs: readonly Run[], layout: Layout, around: LabelObstacles): Placement {
  const ends = layout.shown.flatMap(({ conductor: { from, to } }) => [from.part, to.part])
  const few = (id: string): boolean => ends.filter((end) => end === id).length <= FEW
  const labelOf = new Map(
    layout.parts.flatMap((p, i) => (few(p.id) ? [[p.id, layout.partLabels[i]!] as const] : [])),
  )
  const narrow = runs.map((run) => ({ ...run, block: blockOf(run.lines) }))
  const places = placeLabels(
    narrow.map(({ shown: { conductor: c }, block: { w, h } }) => ({
      ...{ id: c.id, w, h, priority: 1, reach: 0, sides: ['below', 'above'] as const },
      near: [c.to.part, c.from.part].flatMap((id) => {
        const label = labelOf.get(id)
        return label ? edgesOf(label, w) : []
      }),
    })),
    around,
  )
  const isGood = (p: PlacedLabel): boolean => p.placed && !p.leader
  return {
    labels: places.flatMap((p, i) => (isGood(p) ? [sceneLabel(p, narrow[i]!.block)] : [])),
    rest: runs.filter((_, i) => !isGood(places[i]!)),
  }
}

/** Points below and above a label at which words of a width begin where the label begins. */
function edgesOf({ x, y, h }: SceneLabel, w: number): Stretch[] {
  const middle = x + w / 2
  return [y + h - 0.3, y].map((edge) => ({ x1: middle, y1: edge, x2: middle, y2: edge }))
}

const numbered = (run: Run): Run => ({ ...run, block: run.numbers })

function numbersOf({ conductor, withReturn }: Shown): Block {
  const numbers = withReturn ? [conductor.number, withReturn.number] : [conductor.number]
  return blockOf([[{ text: numbers.join('/'), weight: 'bold' }]])
}

/** On one line where a level stretch is long enough for it, otherwise on short lines one below the other. */
function blockFor(lines: Run['lines'], drawn: SceneConductor): Block {
  const level = Math.max(0, ...stretchesOf(drawn).map((s) => Math.abs(s.x2 - s.x1)))
  const single = blockOf([onOneLine(lines)])
  return single.w <= level ? single : blockOf(lines)
}

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
