import type { Answers } from '../calc/answers'
import { keyOf } from '../edit/nets'
import { type Box, boxOf, terminalsOf } from '../kinds/place'
import type { Design, Part } from '../model/design'
import { drawingNotes } from '../model/drawingnotes'
import type { Side } from '../model/kind'
import { blockOf } from './block'
import { type FlaggedBlock, flagged } from './noteflags'
import { partLines } from './partlabels'
import type { SceneLabel } from './scene'

/** Clear strip between a symbol and its words, and between words of different parts, mm. */
const GAP = 1
/** Room kept clear in front of a terminal that is joined, mm: the stub of its conductors and a turn. */
const STUB = 7.5

/** Width of that room, mm. */
const WIDTH = 2.5

/**
 * Words of all parts, each beside its symbol on a side without terminals where there is room: first above, then
 * right, below, left; clear of `texts`. Parts keep the place of their words while their neighbourhood stands. O(parts²) with boxes only.
 */
export function placePartLabels(
  design: Design,
  parts: readonly Part[],
  answers: Answers | null,
  texts: readonly Box[] = [],
): SceneLabel[] {
  const boxes = parts.map((p) => boxOf(p, design.conductors))
  const stubs = joinedTerminals(design, parts).map((t) => stubOf(t.x, t.y, t.side))
  const taken: Box[] = [...texts]
  const noteCount = drawingNotes(design).length
  return parts.map((part, i): SceneLabel => {
    const lines = partLines(design, part, answers)
    const sides = sidesFor(part, design)
    const flags = part.notes?.filter((n) => n <= noteCount) ?? []
    let best: { at: Box; block: FlaggedBlock; cost: number } | null = null
    for (const [rank, candidate] of [...candidates(boxes[i]!, lines, sides, flags)].entries()) {
      const at = candidate.at
      const cost =
        rank * 0.01 +
        overlap(at, boxes) * 10 +
        overlap(grown(at, GAP), taken) * 10 +
        overlap(at, stubs) * 10 +
        overlap(grown(at, 2 * GAP), boxes.toSpliced(i, 1))
      if (!best || cost < best.cost) best = { ...candidate, cost }
      if (cost < 0.2) break
    }
    const { at, block } = best!
    taken.push(at)
    return {
      of: { part: part.id },
      x: at.x,
      y: at.y,
      w: at.w,
      h: at.h,
      turn: 0,
      marks: block.marks,
      leader: null,
    }
  })
}

function joinedTerminals(design: Design, parts: readonly Part[]) {
  const joined = new Set(design.conductors.flatMap(({ from, to }) => [keyOf(from), keyOf(to)]))
  return parts.flatMap((part) =>
    terminalsOf(part, design.conductors).filter((t) => joined.has(keyOf({ part: part.id, terminal: t.key }))),
  )
}

/** The label as an obstacle of the router, a little smaller, so that a line keeps half a millimetre clear of it. */
export const obstacleOf = (label: Box, i: number) => ({
  id: `label ${i}`,
  x: label.x + 0.6,
  y: label.y + 0.6,
  w: Math.max(0, label.w - 1.2),
  h: Math.max(0, label.h - 1.2),
})

function* candidates(
  box: Box,
  lines: ReturnType<typeof partLines>,
  sides: readonly Side[],
  flags: readonly number[],
) {
  const set = (anchor: 'start' | 'middle' | 'end') => flagged(blockOf(lines, anchor), flags, anchor)
  const [start, middle, end] = [set('start'), set('middle'), set('end')]
  const { w, h } = start
  const x2 = box.x + box.w
  for (const side of sides) {
    if (side === 'up' || side === 'down') {
      const y = side === 'up' ? box.y - GAP - h : box.y + box.h + GAP
      yield { at: { x: box.x, y, w, h }, block: start }
      yield { at: { x: box.x + (box.w - w) / 2, y, w, h }, block: middle }
      yield { at: { x: x2 - w, y, w, h }, block: end }
    } else {
      const x = side === 'right' ? x2 + GAP : box.x - GAP - w
      const block = side === 'right' ? start : end
      for (const y of [box.y + (box.h - h) / 2, box.y, box.y + box.h - h]) yield { at: { x, y, w, h }, block }
    }
  }
}

/** Sides without terminals come first; of a part with all its terminals on one side, the side across from it. */
function sidesFor(part: Part, design: Design): readonly Side[] {
  const used = new Set(terminalsOf(part, design.conductors).map((t) => t.side))
  const order: readonly Side[] =
    used.size === 1 && used.has('left')
      ? ['right', 'up', 'down', 'left']
      : used.size === 1 && used.has('right')
        ? ['up', 'left', 'down', 'right']
        : ['up', 'right', 'down', 'left']
  return [...order.filter((s) => !used.has(s)), ...order.filter((s) => used.has(s))]
}

function stubOf(x: number, y: number, side: Side): Box {
  const [dx, dy] = { left: [-1, 0], right: [1, 0], up: [0, -1], down: [0, 1] }[side] as [number, number]
  const w = dx === 0 ? WIDTH : STUB
  const h = dy === 0 ? WIDTH : STUB
  return { x: x + (dx * STUB - w) / 2, y: y + (dy * STUB - h) / 2, w, h }
}

const grown = ({ x, y, w, h }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  w: w + 2 * by,
  h: h + 2 * by,
})

/** Area, mm², that a box shares with others. */
function overlap(a: Box, others: readonly Box[]): number {
  let area = 0
  for (const b of others) {
    const w = Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x)
    const h = Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y)
    if (w > 1e-6 && h > 1e-6) area += w * h
  }
  return area
}
